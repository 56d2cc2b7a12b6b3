import { ArrowDown, ArrowLeft, ArrowRight, ArrowUp, ImagePlus } from 'lucide-react';
import { useEffect, useId, useRef, useState } from 'react';
import {
  firstPlace,
  LEAST_WIDE_MM,
  MOST_WIDE_MM,
  moveBy,
  placeByPoints,
  placeByWidth,
  type Trace,
  type TracePicture,
  widthOf,
} from '../../core/trace';
import { millimetres, type Ticks, toMm } from '../../core/units';
import { Button, IconButton } from '../fields/button';
import { FilePick } from '../fields/file-pick';
import { LengthField } from '../fields/length-field';
import { useRuler } from '../fields/measure';
import { NumberField } from '../fields/number-field';
import { Opening } from '../frame/opening';
import { usePageWords } from '../words';
import { type PickedPicture, readPicture } from './read-picture';
import { type Hand, IDLE, type TracedNet } from './use-tracing';

interface TraceToolsProps {
  readonly trace: Trace;
  readonly net: TracedNet;
  readonly hand: Hand;
  readonly onHand: (hand: Hand) => void;
}

const ACCEPTED = '.png,.jpg,.jpeg,.webp,.svg,image/png,image/jpeg,image/webp,image/svg+xml';

/** Adding a picture and laying it: how strong, how large, how turned, where. */
export function TraceTools({ trace, net, hand, onHand }: TraceToolsProps) {
  const words = usePageWords().tracing;
  const { picture } = trace;
  const [refused, setRefused] = useState<Extract<PickedPicture, { ok: false }>['why'] | null>(null);
  const [busy, setBusy] = useState(false);
  const pick = async (file: File) => {
    setBusy(true);
    const read = await readPicture(file, net);
    setBusy(false);
    setRefused(read.ok ? null : read.why);
    if (!read.ok) return;
    onHand(IDLE);
    trace.add(read.picture);
  };
  return (
    <Opening head={words.head}>
      <div className="trace-tools">
        <p className="soft">{words.why}</p>
        {picture && <Laying {...{ trace, net, hand, onHand, picture }} />}
        <div className="trace-row">
          <FilePick
            label={picture ? words.another : words.add}
            accept={ACCEPTED}
            icon={<ImagePlus aria-hidden="true" />}
            onPick={([file]) => void pick(file)}
          />
          {picture && (
            <Button
              tone="quiet"
              onClick={() => {
                onHand(IDLE);
                trace.remove();
              }}
            >
              {words.remove}
            </Button>
          )}
          {trace.takeBack && (
            <Button
              tone="quiet"
              onClick={() => {
                onHand(IDLE);
                trace.takeBack?.();
              }}
            >
              {words.takeBack}
            </Button>
          )}
        </div>
        {trace.takeBack && <p className="soft">{words.takeBackWhy}</p>}
        {!picture && <p className="soft">{words.addHelp}</p>}
        <p role="status">{busy ? words.adding : ''}</p>
        {refused && <p role="alert">{words.refused[refused]}</p>}
        {trace.unkept && <p role="alert">{words.unkept}</p>}
      </div>
    </Opening>
  );
}

/** One press of an arrow. source: our own, mm */
const NUDGE_MM = { in: 25.4 / 16, mm: 1 } as const;

function Laying({ trace, net, hand, onHand, picture }: TraceToolsProps & { readonly picture: TracePicture }) {
  const words = usePageWords().tracing;
  const { unit } = useRuler();
  const strength = useId();
  const { place } = picture;
  const nudge = (across: number, up: number) => () =>
    trace.lay(moveBy(place, across * NUDGE_MM[unit], up * NUDGE_MM[unit]));
  return (
    <>
      <label className="wish">
        <input
          type="checkbox"
          checked={place.shown}
          onChange={({ target }) => trace.lay({ ...place, shown: target.checked })}
        />
        {words.shown}
      </label>
      <div className="trace-strength">
        <label htmlFor={strength}>{words.strength}</label>
        <input
          id={strength}
          type="range"
          min={5}
          max={100}
          step={5}
          value={Math.round(place.strength * 100)}
          onChange={({ target }) => trace.lay({ ...place, strength: Number(target.value) / 100 })}
        />
      </div>
      <LengthField
        label={words.width}
        help={words.widthHelp}
        value={millimetres(widthOf(place, picture))}
        least={millimetres(LEAST_WIDE_MM)}
        most={millimetres(MOST_WIDE_MM)}
        onChange={(length) => trace.lay(placeByWidth(place, picture, toMm(length)))}
      />
      <Button
        aria-pressed={hand.does === 'point'}
        onClick={() => onHand(hand.does === 'point' ? IDLE : { does: 'point', points: [] })}
      >
        {words.byPoints}
      </Button>
      {hand.does === 'point' && <ByPoints {...{ trace, net, hand, onHand, picture }} />}
      <div className="trace-row">
        <Button
          aria-pressed={hand.does === 'move'}
          onClick={() => onHand(hand.does === 'move' ? IDLE : { does: 'move' })}
        >
          {words.move}
        </Button>
        <IconButton label={words.left} icon={<ArrowLeft />} onClick={nudge(-1, 0)} />
        <IconButton label={words.right} icon={<ArrowRight />} onClick={nudge(1, 0)} />
        <IconButton label={words.up} icon={<ArrowUp />} onClick={nudge(0, 1)} />
        <IconButton label={words.down} icon={<ArrowDown />} onClick={nudge(0, -1)} />
      </div>
      {hand.does === 'move' && <p role="status">{words.moving}</p>}
      <NumberField
        label={words.turn}
        unit={words.degrees}
        value={Math.round(place.turnDeg * 10)}
        least={-1800}
        most={1800}
        decimals={1}
        onChange={(tenths) => trace.lay({ ...place, turnDeg: tenths / 10 })}
      />
      <div className="trace-row">
        <Button
          tone="quiet"
          onClick={() =>
            trace.lay({ ...firstPlace(picture, net.wideMm, net.highMm), strength: place.strength })
          }
        >
          {words.fit}
        </Button>
      </div>
    </>
  );
}

/** A first distance to change. source: our own */
const FIRST_APART = { in: millimetres(25.4 * 4), mm: millimetres(100) } as const;

function ByPoints({ trace, hand, onHand, picture }: TraceToolsProps & { readonly picture: TracePicture }) {
  const words = usePageWords().tracing;
  const { unit } = useRuler();
  const [apart, setApart] = useState<Ticks>(FIRST_APART[unit]);
  // the points that made no size; others may
  const [failed, setFailed] = useState<Hand | null>(null);
  const [a, b] = hand.does === 'point' ? hand.points : [];
  const form = useRef<HTMLDivElement>(null);
  const both = b !== undefined;
  // Both points are tapped: what comes next is the distance, wherever the page stands.
  useEffect(() => {
    if (both) form.current?.querySelector('input')?.focus();
  }, [both]);
  const use = () => {
    const next = a && b && placeByPoints(picture.place, picture, [a, b], toMm(apart));
    setFailed(next ? null : hand);
    if (!next) return;
    trace.lay(next);
    onHand(IDLE);
  };
  return (
    <div ref={form} className="trace-points-form">
      <p role="status">{!a ? words.firstPoint : !b ? words.secondPoint : ''}</p>
      {a && b && (
        <>
          <LengthField
            label={words.apart}
            help={words.apartHelp}
            value={apart}
            least={millimetres(1)}
            most={millimetres(5000)}
            onChange={setApart}
          />
          <Button tone="act" onClick={use}>
            {words.useApart}
          </Button>
        </>
      )}
      {failed === hand && <p role="alert">{words.samePoint}</p>}
    </div>
  );
}
