import { cautionsOf } from '../../../shared/catalogue';
import type { Recipe } from '../../../shared/workbook';
import { bottomPlate, estimateBottom, gramsOf, TYPICAL_MODULUS_GPA } from '../../core/fit';
import { tapeJoints } from '../../core/net/joint-tape';
import type { Contents } from '../../core/rows/contents';
import { millimetres, type Ticks, ticks, toInches, toMm } from '../../core/units';
import { boxOfRecipe } from '../../state/results/box-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { Opening } from '../../ui/frame/opening';
import { usePageWords, useSay } from '../../ui/words';
import { saidSource } from './said-source';

interface BottomViewProps {
  readonly recipe: Recipe;
  readonly contents: Contents;
}

/** What the bottom has to carry and how it may take it: estimates with their assumptions and no load called safe; then the cautions. */
export function BottomView({ recipe, contents }: BottomViewProps) {
  const words = usePageWords().contents;
  const say = useSay();
  const ruler = useRuler();
  const box = boxOfRecipe(recipe, useToolInHand());
  if (!box) return null;
  const { net } = box;
  const plate = bottomPlate(net);
  const bottom = estimateBottom(plate, { caliperUm: recipe.caliperUm, modulusGpa: null }, gramsOf(contents));
  const joints = net.pieces.flatMap((piece) => tapeJoints(piece));
  const tape = ticks(joints.reduce((sum, { length, strips }) => sum + length * strips, 0));
  const area = joints.reduce((sum, joint) => sum + joint.length * joint.depth, 0);
  const strips = joints.reduce((sum, joint) => sum + joint.strips, 0);
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
        <Opening head={words.stiffness(caliper)}>
          <p>{words.stiffnessWhy(modulus, caliper, stiff.toFixed(2))}</p>
        </Opening>
        {plate === null && <p>{words.sagUnknown}</p>}
        {bottom.sag && plate && (
          <Opening head={sagOf(bottom.sag.mm)}>
            <p>
              {words.sagWhy(
                `${bottom.sag.loadPa.toFixed(0)} Pa`,
                long(millimetres(bottom.sag.spanMm)),
                `${(stiff * plate.layers).toFixed(2)} mN·m`,
                plate.layers,
              )}
            </p>
          </Opening>
        )}
        {joints.length > 0 && (
          <Opening head={words.joints(long(tape), areaWords(area, ruler.unit), strips)}>
            <p>
              {words.jointsWhy(
                joints.map(
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
              {say(says)} <span className="caption">{saidSource(source, words, say)}</span>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}

/** Square inches or square centimeters, to two figures; `area` in square ticks. */
function areaWords(area: number, unit: 'in' | 'mm'): string {
  const side = Math.sqrt(area);
  return unit === 'in'
    ? `${(toInches(side) ** 2).toFixed(1)} in²`
    : `${(toMm(side) ** 2 / 100).toFixed(1)} cm²`;
}
