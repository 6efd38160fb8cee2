/** The command line: `practice`, `live`, `demo` or `protocol`. Only checks that this Node can run the rest, then hands over. */

const leastNode = 24;

if (Number(process.versions.node.split('.')[0]) < leastNode) {
  process.stderr.write(
    `This is Node ${process.versions.node}; Nightjar needs Node ${leastNode}. Run it through npm, which uses the Node it ` +
      'installs: npm ci && npm start\n',
  );
  process.exit(1);
}

const { run } = await import('./command.ts');
process.exit(await run(process.argv.slice(2), process.env));
