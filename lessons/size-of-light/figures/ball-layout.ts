import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import { holeOfRing } from '#core/light/lights-around-ball.ts';
import type { Lit } from './ball-shading.ts';

/** A light in the plan: its middle and two ends of each lit part, pixels. */
interface PlannedLight {
  readonly x: number;
  readonly y: number;
  readonly path: string;
}

/**
 * Where everything stands on the sheet, pixels: from above, ball, lights and the axis to the camera, which is below; beside it, or below on a
 * narrow sheet, room for four balls. A scale that is *held* while the hand drags stays.
 */
export function ballLayout(lit: Lit, box: SheetBox, held?: DrawingScale) {
  const { width, height, text, small } = box;
  const isWide = width > 1.25 * height;
  const plan = isWide
    ? { left: 0, right: 0.44 * width, top: 0.6 * text, bottom: height - 4.1 * small }
    : { left: 0, right: width, top: 0.6 * text, bottom: 0.56 * height };
  const balls = isWide
    ? { left: 0.46 * width, right: width - 6, top: 0.4 * text, bottom: height - 2.6 * small }
    : { left: 4, right: width - 4, top: 0.58 * height, bottom: height - 4.2 * small };

  const { sourceSize, flashDistance, ballRadius, lightAngle, arrangement } = lit;
  const away = flashDistance + ballRadius;
  const half = sourceSize / 2;
  const aside = arrangement === 'two' ? 1 : 0.5;
  const reach = Math.hypot(away, half);
  const roomAcross = plan.right - plan.left - 1.5 * text;
  const roomDown = plan.bottom - plan.top - 3 * small;
  const above = Math.max(ballRadius, Math.min(half, reach));
  const scale = held ?? fittingScale(box, Math.min(roomAcross / (reach * (1 + aside)), roomDown / (reach + above)));
  const mm = scale.pixelsPerMillimetre;
  // One light stands to the left: the ball goes to the right of the middle.
  const ballX = plan.left + 0.75 * text + roomAcross * (arrangement === 'one' ? 0.66 : 0.5);
  const ballY = plan.top + Math.max(12, Math.min(above * mm, 0.5 * roomDown)) + 4;
  const light = (angle: number): PlannedLight => {
    const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
    const [x, y] = [ballX + away * mm * sin, ballY + away * mm * cos];
    const end = (along: number) => `${(x + along * mm * cos).toFixed(1)} ${(y - along * mm * sin).toFixed(1)}`;
    const hole = half * holeOfRing;
    return {
      x,
      y,
      path:
        arrangement === 'ring'
          ? `M${end(-half)}L${end(-hole)}M${end(hole)}L${end(half)}`
          : `M${end(-half)}L${end(half)}`,
    };
  };
  const angle = arrangement === 'ring' ? 0 : -lightAngle;
  const main = light(angle);
  const lights = arrangement === 'two' ? [main, light(lightAngle)] : [main];
  const ends = [-half, half].map((along) => {
    const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
    return { x: ballX + mm * (away * sin + along * cos), y: ballY + mm * (away * cos - along * sin) };
  });
  const nearest = {
    x: ballX + ballRadius * mm * Math.sin(angle),
    y: ballY + ballRadius * mm * Math.cos(angle),
  };
  const arc = Math.min(0.55 * away * mm, 0.42 * roomDown);
  const turn = { x: ballX - arc * Math.sin(lightAngle), y: ballY + arc * Math.cos(lightAngle) };

  const columns = isWide ? 2 : 4;
  const cell = { width: (balls.right - balls.left) / columns, height: (balls.bottom - balls.top) / (isWide ? 2 : 1) };
  const heading = 1.35 * small;
  const radius = Math.max(6, Math.min(0.47 * cell.width, 0.49 * (cell.height - heading)));
  return {
    scale,
    plan,
    isWide,
    ballX,
    ballY,
    ballRadius: ballRadius * mm,
    axis: `M${ballX} ${plan.top}V${plan.bottom - 1.5 * small}`,
    lights,
    main,
    /** Where its distance is written: beyond it. */
    name: {
      x: main.x + 22 * Math.sin(angle),
      y: main.y + 22 * Math.cos(angle) + (0.4 + 0.6 * Math.cos(angle)) * small,
    },
    sight: ends
      .map(({ x, y }) => `M${nearest.x.toFixed(1)} ${nearest.y.toFixed(1)}L${x.toFixed(1)} ${y.toFixed(1)}`)
      .join(''),
    turn,
    arc:
      arrangement === 'ring' || arc * lightAngle < 2
        ? ''
        : `M${ballX} ${(ballY + arc).toFixed(1)}A${arc.toFixed(1)} ${arc.toFixed(1)} 0 0 1 ${turn.x.toFixed(1)} ${turn.y.toFixed(1)}`,
    radius,
    /** Two rows of two, or one of four: row 0 is the matt ball’s, column 1 what is now. */
    cells: [0, 1].flatMap((row) =>
      [0, 1].map((column) => {
        const [across, down] = isWide ? [column, row] : [2 * row + column, 0];
        const top = balls.top + down * cell.height;
        return {
          row,
          column,
          x: balls.left + (across + 0.5) * cell.width,
          y: top + heading + (cell.height - heading) / 2,
          nameY: top + 0.95 * small,
        };
      }),
    ),
    ruleY: height - 1,
  };
}
