import { describeReference } from '#tests/support/reference.ts';
import cases from './cases.json';
import { ours } from './ours.ts';

describeReference(cases, ours);
