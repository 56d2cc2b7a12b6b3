import type { Contents } from '../../../shared/contents';
import type { Recipe } from '../../../shared/workbook';
import {
  bottomLayers,
  cautionsOf,
  estimateBottom,
  gramsOf,
  type NeededRoom,
  TYPICAL_MODULUS_GPA,
} from '../../core/fit';
import { tapeJoints } from '../../core/plan/supplies/joint-tape';
import { millimetres, type Ticks, ticks, toInches, toMm } from '../../core/units';
import { boxOfRecipe } from '../../state/results/box-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { Opening } from '../../ui/frame/opening';
import { usePageWords, useSay } from '../../ui/words';

interface BottomViewProps {
  readonly recipe: Recipe;
  readonly contents: Contents;
  readonly room: NeededRoom;
}

/** What the bottom has to carry and how it may take it: estimates with their assumptions and no load called safe; then the cautions. */
export function BottomView({ recipe, contents, room }: BottomViewProps) {
  const words = usePageWords().contents;
  const say = useSay();
  const ruler = useRuler();
  const box = boxOfRecipe(recipe, useToolInHand());
  if (!box) return null;
  const { net } = box;
  const faces = net.pieces.flatMap((piece) => piece.faces);
  const layers = bottomLayers(faces.map(({ role }) => role));
  const [width, depth] = room.inside;
  const bottom = estimateBottom(
    { widthMm: toMm(width), depthMm: toMm(depth) },
    { caliperUm: recipe.caliperUm, modulusGpa: null, layers },
    gramsOf(contents),
  );
  const strips = net.pieces.flatMap((piece) => tapeJoints(piece));
  const tape = ticks(strips.reduce((sum, { length, strips: n }) => sum + length * n, 0));
  const area = strips.reduce((sum, strip) => sum + strip.length * strip.depth, 0);
  const caliper = `${(recipe.caliperUm / 1000).toFixed(2)} mm`;
  const modulus = `${TYPICAL_MODULUS_GPA} GPa`;
  const stiff = bottom.stiffness.milliNewtonMetres;
  const long = (length: Ticks) => lengthWords(length, ruler);
  // Sag is no mark on a ruler: in the maker's unit, to what the estimate is good for.
  const sagOf = (mm: number) => {
    const [sag, digits] = ruler.unit === 'in' ? [mm / 25.4, 2] : [mm, 1];
    const least = 10 ** -digits;
    return sag < least
      ? words.sagsUnder(`${least} ${ruler.unit}`)
      : words.sag(`${sag.toFixed(digits)} ${ruler.unit}`);
  };
  return (
    <>
      <section className="bottom" aria-labelledby="bottom-head">
        <h2 id="bottom-head">{words.strength}</h2>
        <p>{bottom.grams === null ? words.weigh : words.weighs(bottom.grams)}</p>
        <Opening head={words.stiffness(stiff.toFixed(2), caliper, `E ${modulus}`)}>
          <p>{words.stiffnessWhy(modulus, caliper, stiff.toFixed(2))}</p>
        </Opening>
        {bottom.sagMm !== null && bottom.loadPa !== null && (
          <Opening head={sagOf(bottom.sagMm)}>
            <p>
              {words.sagWhy(
                `${bottom.loadPa.toFixed(0)} Pa`,
                long(millimetres(bottom.spanMm)),
                `${(stiff * layers).toFixed(2)} mN·m`,
                layers,
              )}
            </p>
          </Opening>
        )}
        {strips.length > 0 && (
          <Opening head={words.joints(long(tape), areaWords(area, ruler.unit), strips.length)}>
            <p>
              {words.jointsWhy(
                strips.map(
                  ({ length, depth: deep, strips: n }) => `${n} × ${long(length)}, ${long(deep)} deep`,
                ),
              )}
            </p>
          </Opening>
        )}
        <ul className="advice">
          {bottom.advice.map((advice) => (
            <li key={advice}>{words.advice[advice]}</li>
          ))}
          <li>{words.noPromise}</li>
        </ul>
      </section>
      <section className="cautions" aria-labelledby="cautions-head">
        <h2 id="cautions-head">{words.cautions}</h2>
        <ul>
          {cautionsOf(contents).map(({ hazard, says, source }) => (
            <li key={hazard}>
              {say(says)} <span className="caption">{words.source(say(source))}</span>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}

/** Square inches or square centimetres, to two figures; `area` in square ticks. */
function areaWords(area: number, unit: 'in' | 'mm'): string {
  const side = Math.sqrt(area);
  return unit === 'in'
    ? `${(toInches(side) ** 2).toFixed(1)} in²`
    : `${(toMm(side) ** 2 / 100).toFixed(1)} cm²`;
}
