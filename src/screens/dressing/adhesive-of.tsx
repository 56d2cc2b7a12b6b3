import { useMemo } from 'react';
import type { FavorEvent } from '../../../shared/workbook';
import type { SizedPiece } from '../../core/dress';
import type { BoxNet } from '../../core/net';
import { panelWords } from '../../core/net/panel-words';
import { sayReason } from '../../core/plan';
import { planAdhesive } from '../../core/plan/supplies/adhesive';
import { useWorkbook } from '../../state/use-workbook';
import { WideBox } from '../../ui/drawing/wide-box';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { Opening } from '../../ui/frame/opening';
import { useWording } from '../../ui/frame/wording';
import { usePageWords, useSay } from '../../ui/words';

interface AdhesiveOfProps {
  readonly net: BoxNet;
  readonly sized: readonly SizedPiece[];
  readonly event: FavorEvent | null;
}

/** The adhesive plan of one box, joint by joint, with its arithmetic: tape, or glue where the event uses it. */
export function AdhesiveOf({ net, sized, event }: AdhesiveOfProps) {
  const words = usePageWords().dressing;
  const say = useSay();
  const ruler = useRuler();
  const wording = useWording();
  const supplies = useWorkbook((state) => state.rows.supplies);
  const chosen = supplies.get(event?.glueId ?? '');
  const glue = chosen?.kind === 'glue' ? chosen : null;
  const plan = useMemo(() => {
    const pieces = sized.flatMap(({ piece, size }) => (size ? [{ piece, size }] : []));
    return planAdhesive({ net, pieces }, glue);
  }, [net, sized, glue]);
  if (plan.rows.length === 0) return null;
  return (
    <Opening head={<strong>{words.holds}</strong>}>
      <p className="soft">{words.holdsWhy}</p>
      <WideBox label={words.holds}>
        <table className="adhesive-table">
          <thead>
            <tr>
              {[words.joint, words.by, words.length, words.widest, words.why].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {plan.rows.map((row, at) => {
              const panel = row.onto === null ? row.panel : say(panelWords(row.panel));
              return (
                <tr key={`${row.panel} ${row.onto ?? at}`}>
                  <th scope="row">
                    {row.onto === null ? panel : words.onto(panel, say(panelWords(row.onto)))}
                  </th>
                  <td>{words[row.by]}</td>
                  <td data-head={words.length}>{words.strip(row.strips, lengthWords(row.length, ruler))}</td>
                  <td {...(row.widest !== null && { 'data-head': words.widest })}>
                    {row.widest === null ? '' : lengthWords(row.widest, ruler)}
                  </td>
                  <td className="soft">{row.why.map((why) => sayReason(why, wording)).join(' ')}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </WideBox>
      <p>
        {plan.tape > 0 && words.perBoxTape(lengthWords(plan.tape, ruler))}{' '}
        {plan.glueMg > 0 && words.perBoxGlue(plan.glueMg)} {words.times(plan.pressMinutes, plan.setMinutes)}
      </p>
    </Opening>
  );
}
