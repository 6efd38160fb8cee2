/** One clinical setting as data: its default, its bounds, and where they come from. */

export interface NumberSetting {
  readonly default: number;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
  readonly meaning: string;
  readonly source: string;
}

/** Known to the trade, and nothing to cite. */
export const common = 'common practice, no source';
