import loadHighs from 'highs';
import { type WholeSolver, wholeSolverOf } from '../src/core/plan/mix/whole-program';

/** The general solver that the app fetches when a mix of papers is asked for. */
export const loadWholeSolver = async (): Promise<WholeSolver> => wholeSolverOf(await loadHighs());
