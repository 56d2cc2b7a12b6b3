import type { Count, Naming, Texts } from './texts';

/** Texts of ticking off, the till, the ways of buying and the price to ask. */
export interface BuyingWords
  extends Texts<
    | 'ticked'
    | 'receive'
    | 'receiveAll'
    | 'takeBack'
    | 'untick'
    | 'leftOverAll'
    | 'goods'
    | 'discount'
    | 'shipping'
    | 'tax'
    | 'till'
    | 'ways'
    | 'waysWhy'
    | 'plainWay'
    | 'cheapest'
    | 'share'
    | 'shared'
    | 'copied'
    | 'notShared'
    | 'terms'
    | 'termsWhy'
    | 'minimum'
    | 'shippingCost'
    | 'freeShipping'
    | 'freeShippingHelp'
    | 'taxRate'
    | 'addDiscount'
    | 'removeDiscount'
    | 'discountFrom'
    | 'discountPercent'
    | 'askHead'
    | 'askWhy'
    | 'ask'
    | 'hourly'
    | 'margin'
    | 'noAsk'
    | 'askBegin'
    | 'nothing'
    | 'leftOut'
    | 'leftOutWhy'
    | 'left'
  > {
  readonly tickOf: Naming;
  readonly receiveOf: Naming;
  readonly takeBackOf: Naming;
  readonly received: (units: string) => string;
  readonly boughtPacks: (packs: number, units: string) => string;
  readonly moreNeeded: Naming;
  readonly progress: (bought: number, of: number) => string;
  readonly worth: (units: string, money: string) => string;
  readonly reaching: Naming;
  readonly dearer: Naming;
  readonly percentOff: Count;
  readonly timeShare: (total: string, perFavor: string) => string;
}
