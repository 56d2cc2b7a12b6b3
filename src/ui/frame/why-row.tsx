import { ChevronRight } from 'lucide-react';
import type { Reason } from '../../core/units/reason';
import { Working } from './working';

/** What turns when the row below it opens; stands in the button that opens it. */
export const WhyTurn = () => <ChevronRight className="why-turn" aria-hidden="true" />;

interface WhyRowProps {
  readonly id: string;
  readonly columns: number;
  readonly why: readonly Reason[];
}

/** A row of a table under the row whose number it explains. */
export function WhyRow({ id, columns, why }: WhyRowProps) {
  return (
    <tr className="why-row" id={id}>
      <td colSpan={columns}>
        <Working why={why} />
      </td>
    </tr>
  );
}
