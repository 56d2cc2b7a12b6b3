import Manifold from 'manifold-3d';
import { Solids } from './solids';

/** The library of solids, ready, and what one file of tests makes with it: free that after each test. */
export const kit = await Manifold();
kit.setup();
export const solids = new Solids(kit);
