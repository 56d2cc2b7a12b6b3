export * from '../units/reason';
