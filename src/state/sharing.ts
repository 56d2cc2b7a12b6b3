/** A device on the list of those that share the shelf. */
export interface SharedDevice {
  readonly id: string;
  readonly name: string;
  /** ISO 8601, when it last told anything of itself. */
  readonly lastAt: string;
  /** Whether it has everything that this one wrote. */
  readonly hasAll: boolean;
  readonly isThis: boolean;
}

/** A link that shows one event to others: `bench` to helpers, who count, `class` to learners, who look. */
export interface ShownHere {
  readonly id: string;
  readonly kind: 'bench' | 'class';
  readonly eventId: string;
  /** The last part of its address. */
  readonly link: string;
  /** How many helpers have counted. */
  readonly helpers: number;
  /** Whether the server has what is to be seen now. */
  readonly isShown: boolean;
  /** Withdrawn here, and the server has not heard of it yet. */
  readonly isGoing: boolean;
}

/**
 * How this shelf stands with the other devices.
 * - `off`: another tab of this browser carries the rows. `offline`: the server cannot be reached; goes on by itself.
 * - `asks`: another device deleted more than a fifth of the shelf, and the maker decides. `removed`: another device took this one off the list.
 * - `refused`: the server does not let this device in.
 */
export interface Sharing {
  readonly line: 'off' | 'offline' | 'joining' | 'joined' | 'asks' | 'removed' | 'refused';
  /** What this device counts under. */
  readonly device: string;
  /** Changes of this device that the server has not acknowledged yet. */
  readonly unsent: number;
  readonly devices: readonly SharedDevice[];
  /** How many rows another device deleted at once, where `asks`. */
  readonly deletions: number;
  /** The links that show one event. */
  readonly shown: readonly ShownHere[];
}

/** What sharing can do; fetched with the page that needs it. */
export interface SharingDesk {
  /** Whether the address of this app has an exchange; asks it. */
  isThere(): Promise<'yes' | 'no' | 'not-secure'>;
  /** Makes a shared shelf of this one. */
  begin(deviceName: string): Promise<boolean>;
  /** Joins the shelf that a link names; false: it is no such link. */
  join(link: string, deviceName: string): Promise<boolean>;
  /** The last part of a link that another device joins by; null: nothing is shared. */
  link(): string | null;
  /** Takes a device off the list: everything moves to a new key, which it does not get. It keeps what it has. */
  remove(deviceId: string): Promise<boolean>;
  /** Makes a link that shows one event; false: not now, since another tab carries the rows or the server is away. */
  showEvent(eventId: string, kind: ShownHere['kind'], unit: 'in' | 'mm'): Promise<boolean>;
  /** Takes such a link back: nothing new is shown or counted by it. */
  withdraw(id: string): Promise<boolean>;
  /** Ends sharing on this device. Everything stays here. */
  leave(): Promise<void>;
  /** Where another device deleted much: take it, or keep everything here and there. */
  decide(take: boolean): void;
}
