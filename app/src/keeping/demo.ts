export { demoPattern } from '@seamwright/pattern';
