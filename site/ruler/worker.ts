/** Holds the photograph and measures it beside the page, which stays free for the hand. Requests and replies are those of `messages.ts`. */
import { contrastAlong } from '#core/ruler/contrast-along.ts';
import { noCombWords } from '#core/ruler/find-comb.ts';
import { measureMarks } from '#core/ruler/measure-marks.ts';
import type { GreyPhotograph, RulerLine } from '#core/ruler/photograph.ts';
import { offAxisOf } from '#core/ruler/ruler-scale.ts';
import type { FoundMarks, RulerReply, RulerRequest } from './messages.ts';
import { openPhotograph, previewOfGrey, RefusedFile, rgbaOf } from './open-photograph.ts';
import { renderSample } from './render-sample.ts';
import { sampleCamera, sampleLens, samples } from './samples.ts';

let photograph: GreyPhotograph | undefined;
/** The number of the request that brought it. */
let number = 0;

addEventListener('message', ({ data }: MessageEvent<RulerRequest>) => {
  answer(data).catch((error: unknown) => {
    const words =
      error instanceof RefusedFile
        ? error.message
        : 'This could not be worked out: the browser has too little memory left, or the file is damaged.';
    reply({ id: data.id, kind: 'refused', words });
  });
});

async function answer(request: RulerRequest): Promise<void> {
  const { id } = request;
  if (request.kind === 'open') {
    const { photograph: opened, preview, said, note } = await openPhotograph(request.file);
    photograph = opened;
    number = id;
    reply({ id, kind: 'opened', columns: opened.columns, rows: opened.rows, preview, said, note }, [preview]);
  } else if (request.kind === 'sample') {
    const sample = samples[request.sample]!;
    photograph = renderSample(sample);
    number = id;
    const preview = await previewOfGrey(photograph);
    const said = {
      focalLength: sampleLens.focalLength,
      fNumber: sample.fNumber,
      pupilMagnification: sampleLens.pupilMagnification,
      sensorWidth: sampleCamera.sensorWidth,
      pixelsAcross: sampleCamera.columns,
    };
    reply({ id, kind: 'opened', columns: photograph.columns, rows: photograph.rows, preview, said, note: '' }, [
      preview,
    ]);
  } else if (!photograph || request.of !== number) {
    reply({ id, kind: 'gone' });
  } else if (request.kind === 'measure') {
    const found = measured(photograph, request.line, request.reach);
    if (typeof found === 'string') reply({ id, kind: 'refused', words: found });
    else reply({ id, kind: 'measured', marks: found });
  } else {
    const { x, y, side } = request;
    const pixels = enlarged(photograph, x, y, side);
    reply({ id, kind: 'loupe', pixels, side }, [pixels.buffer]);
  }
}

/** More marks than that say no more about how contrast falls. */
const mostContrasts = 400;

function measured(from: GreyPhotograph, line: RulerLine, reach: number): FoundMarks | string {
  const found = measureMarks(from, line, reach);
  if (found.outcome === 'no comb') return noCombWords(found);
  const { cycles, drift, phase, length, lean, variances, profile } = found;
  const contrasts = contrastAlong(profile, found, length);
  const every = Math.ceil(contrasts.length / mostContrasts);
  return {
    ...{ cycles, drift, phase, length, lean, variances },
    offAxis: offAxisOf(from, line),
    contrasts: contrasts.filter((_, at) => at % every === 0),
  };
}

/** *side* × *side* pixels about a place; what is outside the photograph is black. */
function enlarged({ columns, rows, grey }: GreyPhotograph, x: number, y: number, side: number) {
  const part = new Uint8Array(side * side);
  const [left, top] = [Math.round(x - side / 2), Math.round(y - side / 2)];
  for (let row = 0; row < side; row++) {
    for (let column = 0; column < side; column++) {
      const [atX, atY] = [left + column, top + row];
      if (atX >= 0 && atX < columns && atY >= 0 && atY < rows) part[row * side + column] = grey[atY * columns + atX]!;
    }
  }
  return rgbaOf(part);
}

function reply(message: RulerReply, transfer: Transferable[] = []): void {
  postMessage(message, { transfer });
}
