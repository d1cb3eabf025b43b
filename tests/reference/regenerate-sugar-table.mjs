/**
 * Writes data/nbs-c440.json from the sugar table in the definitions file of GNU Units.
 * How: `apt-get download units && dpkg -x units_*.deb there` (Debian's package, 2.22), then
 * `node tests/reference/regenerate-sugar-table.mjs there/usr/share/units/definitions.units`.
 */
import { readFileSync, writeFileSync } from 'node:fs';

const definitions = readFileSync(process.argv[2] ?? '/usr/share/units/definitions.units', 'utf8');
const table = /^brix\[[^\]]*\](?<rows>(?:.*\\\n)+.*)/m.exec(definitions)?.groups?.rows;
if (!table) throw new Error('no sugar table in that definitions file');
const rows = [...table.matchAll(/(\d+) (\d\.\d{5})/g)].map(([, brix, apparent]) => ({
  brix: Number(brix),
  apparent: Number(apparent),
}));
const table440 = {
  source:
    'NBS Circular 440, Polarimetry, Saccharimetry and the Sugars (1942), table 114, apparent SG 20/20 in air',
  read: 'as tabulated in the definitions file of GNU Units 2.22 (Debian), by regenerate-sugar-table.mjs',
  tolerance: 0.00012,
  because:
    'to 40 Brix: the table rests on Plato 1900, which ICUMSA corrected by up to 0.00011 there; ' +
    'its rounding is 0.000005',
};
const head = JSON.stringify(table440, null, 2).slice(0, -2);
const lines = rows.map((row) => `    { "brix": ${row.brix}, "apparent": ${row.apparent.toFixed(5)} }`);
writeFileSync(
  new URL('data/nbs-c440.json', import.meta.url),
  `${head},\n  "rows": [\n${lines.join(',\n')}\n  ]\n}\n`,
);
