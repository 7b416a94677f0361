import { sealWorkingsOf } from '../../workings/sealWorking';
import { type Finder, finder, foundEverywhere } from './finder';

export const sealFinders: readonly Finder[] = [
  finder('part', ['section', 'inside-diameter', 'groove'], ({ family, id }) =>
    sealWorkingsOf(family, id).map(foundEverywhere),
  ),
];
