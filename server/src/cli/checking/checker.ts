import { isCheckThread, runCheckThread } from './checkThread';

// The part of the program that checks: all rules and what they stand on. The entry reads it once there is a document whose
// findings are not known from an earlier run, and every thread that checks is started from it.
export { changedSince } from '../history/changedSince';
export { sarifReport } from '../report/sarif';
export { FileChecker } from './checkOne';

if (isCheckThread()) runCheckThread();
