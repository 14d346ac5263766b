// Expected values of cases.json by culori 4.0.2. Run: node expected.mjs
import { converter } from 'culori';

const [linear, encoded] = ['lrgb', 'rgb'].map((mode) => converter(mode));
const colours = [
  [0.3, 0.4, 0.2],
  [0.06, 0.05, 0.02],
  [0.02, 0.025, 0.04],
  [0.1, 0.2, 0.05],
];
for (const [x, y, z] of colours) {
  const xyz = { mode: 'xyz65', x, y, z };
  const digits = ({ r, g, b }) => [r, g, b].map((value) => value.toFixed(10)).join(', ');
  console.log(x, y, z, 'linear', digits(linear(xyz)), 'encoded', digits(encoded(xyz)));
}
