import { expect, test } from 'vitest';
import { roundedDrawings, withoutComments } from './plain-markup.ts';

test('comments go, and what scripts and styles hold stays', () => {
  const script = '<script>const open = "<!--";\nconst end = "-->";</script>';
  expect(withoutComments(`<p>a<!--[--> b<!--\n--></p>${script}<style>/*<!--x-->*/</style><!--]-->`)).toBe(
    `<p>a b</p>${script}<style>/*<!--x-->*/</style>`,
  );
});

test('a drawing keeps its shape to a hundredth, and all that it says', () => {
  const built =
    '<svg viewBox="0 0 720 420"><path d="M101.58546272406751 31.900000000000002V1e-7" aria-label="m 0.12345"></path><text x="-0.0012" y=".5551">0.12345</text></svg>';
  expect(roundedDrawings(`<p title="0.12345">0.12345</p>${built}`)).toBe(
    '<p title="0.12345">0.12345</p><svg viewBox="0 0 720 420"><path d="m101.59 31.9v-31.9" aria-label="m 0.12345"></path><text x="0" y="0.56">0.12345</text></svg>',
  );
});

test('a drawing within a drawing is one, too', () => {
  expect(roundedDrawings('<svg><svg></svg><circle cx="0.12345" fill-opacity="0.12345"></circle></svg>')).toBe(
    '<svg><svg></svg><circle cx="0.12" fill-opacity="0.123"></circle></svg>',
  );
});

test('a number so small that it is written with an exponent is none', () => {
  expect(roundedDrawings('<svg><line x1="1.2345e-7"></line></svg>')).toBe('<svg><line x1="0"></line></svg>');
});
