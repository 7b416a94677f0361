import { unbalanceCases } from '../../workings/unbalanceCases';
import { unbalanceWorking, unbalanceWorkingsOfInstruction } from '../../workings/unbalanceWorking';
import { type Finder, finder, foundEverywhere, foundOn } from './finder';

export const unbalanceFinders: readonly Finder[] = [
  finder(
    'balance-group',
    ['id', 'grade', 'permissible', 'mass', 'planes', 'permissible-for'],
    ({ family, id, group }) =>
      unbalanceCases(family, id, family.space, family.space.everything).map((one) =>
        foundOn(unbalanceWorking(one, group.permissible), one.where, one.space),
      ),
  ),
  finder('instruction', ['balance', 'grade', 'accept'], ({ procedure, view }) =>
    unbalanceWorkingsOfInstruction(procedure, view).map(foundEverywhere),
  ),
];
