/** Contrast of two colours by the formula of WCAG 2.2, 1.4.3 ("relative luminance", "contrast ratio"). */

/** The red, green and blue of a computed `rgb(...)` colour, 0 to 255. Throws on one that is not opaque. */
function channels(colour: string): number[] {
  const found = /^rgb\((\d+), (\d+), (\d+)\)$/.exec(colour);
  if (!found) throw new Error(`no opaque rgb colour: ${colour}`);
  return found.slice(1).map(Number);
}

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = channels(colour).map((channel) => {
    const part = channel / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** From 1 to 21. */
export function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}
