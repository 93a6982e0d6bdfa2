/**
 * People who were hurt: a part of the body and a word of harm, a solvent where skin is, sick from fumes. Read from
 * whole sentences, since the "ouch" stands behind its comma. A near miss hurts nobody.
 */
import type { InjuryKind } from './act.ts';
import { type Scene, textOf } from './scene.ts';

const BODY =
  '(?:thumbs?|fingers?|fingertips?|hands?|forearms?|arms?|palms?|wrists?|skin|knuckles?|elbows?|legs?|knees?|shins?|foot|feet|toes?|nails?|fingernails?|face|cheek|lips?|nose|ears?|neck|scalp|ponytail|beard|eyes?)';
const WHOSE = "(?:my|his|her|their|our|your|[a-z]+ 's)";
const OWN = `${WHOSE} (?:left |right |poor |whole |bare |own |index |little |middle )*${BODY}`;
const HARM =
  '(?:burn|burns|burnt|burned|cut|cuts|gashed|scalded|scorched|singed|seared|pinched|crushed|trapped|nipped|squashed|squeezed|stabbed|jabbed|pricked|pierced|punctured|sliced|slashed|grazed|skinned|hurt|hurts|injured|nicked|blistered|blisters|bruised|sprained|smashed|mashed|whacked|bleeding|bleeds|bled|swollen|stung|stings|splinter|broke|broken|bitten|caught|jammed|hit|banged|splashed|sprayed)';
const SELF = '(?:myself|himself|herself|themselves|yourself)';
const SELF_HARM = '(?:burnt|burned|cut|scalded|hurt|injured|stabbed|jabbed|pricked|sliced|nicked|impaled|gashed|branded|singed|pinched)'; // prettier-ignore
const SOLVENT =
  '(?:acetone|ipa|isopropanol|isopropyl|isopropyl alcohol|alcohol|solvents?|resin|degreaser|thinner|white spirit|super ?glue|superglue)';
const SICK = '(?:sick|ill|dizzy|faint|nauseous|nauseated|queasy|light ?headed|woozy|headache|coughing|short of breath)'; // prettier-ignore
const AIR =
  '(?:fumes?|smell|stink|vapou?rs?|smoke|abs|asa|nylon|resin|acetone|ipa|solvents?|styrene|printing|the printers?|the air)';
const SMALL = '(?:wire|wires|splinter|shard|chip|bit|piece|needle|sliver|strand|bristle|blade|tip|string|hair)'; // prettier-ignore

const any = (...rows: readonly string[]): RegExp => new RegExp(rows.map((row) => `\\b${row}\\b`).join('|'), 'u'); // prettier-ignore

/** One row a way of telling it. */
const TOLD = any(
  `${HARM} ${OWN}`,
  `${OWN} (?:is|was|got|are|were|gets) (?:all |badly |a bit |quite )?(?:${HARM}|stuck)`,
  `${OWN} ${HARM}`,
  `(?:dropped|fell|landed|came down|slammed|shut)(?: [a-z'#0-9]+){0,6} on (?:my|his|her|their|[a-z]+ 's) (?:left |right )?(?:foot|feet|toes?|fingers?|hands?|thumb|leg|head)`,
  `(?:trapped|crushed|pinched|caught|squashed) (?:a|the|two|both) (?:fingers?|thumb|hand|toe)`,
  `(?:cut|sliced|burnt|burned|pricked|scalded|stabbed|gashed) (?:a|the|two|both) (?:fingers?|thumb|hand|palm|arm)`,
  `${SELF_HARM} ${SELF}`,
  `${SMALL}(?: [a-z]+){0,2} (?:in|into|under|through) (?:my|his|her|their|[a-z]+ 's) (?:left |right )?(?:fingers?|thumb|hand|palm|foot|skin|nail|fingernail|toe)`,
  `(?:hair|ponytail|beard|fingers?|sleeve|scarf|glove|necklace) (?:got |was |is |gets )?(?:caught|trapped|pulled|dragged|wound|tangled|crushed|pinched) (?:up )?(?:in|into|by|between|under|round|around)`,
  `${SOLVENT}(?: [a-z]+){0,2} (?:on|onto|over|all over) (?:${WHOSE} |bare |the )(?:bare |left |right )?(?:skin|hands?|arms?|fingers?|face|legs?)`,
  `${SOLVENT} on skin`,
  `(?:splash\\w*|sprayed|squirted|got|spat|flew|flicked)(?: [a-z]+){0,4} (?:in|into) (?:(?:my|his|her|their|the|an|one|[a-z]+ 's) )?(?:left |right )?(?:eyes?|face)`,
  `(?:${SOLVENT}|dust|glue|${SMALL}|plastic|filament)(?: [a-z]+){0,2} (?:in|into) (?:my|his|her|their|one|[a-z]+ 's) (?:left |right )?eyes?`,
  `(?:splash|${SOLVENT}) in (?:the )?eyes?`,
  `(?:eyes?|face)\\b.{0,80}\\b(?:splash\\w*|sprayed|stings?|burns?|burning)`,
  `(?:feel\\w*|felt|am|'m|is|are|was|were|got|getting|made (?:me|him|her|us)|makes (?:me|him|her|us)|making (?:me|him|her|us)) (?:a bit |a little |quite |really |very |rather )?(?:a )?${SICK}(?: [a-z]+){0,2} (?:from|off|of|because of|with|after|by)(?: [a-z']+){0,3} ${AIR}`,
  `(?:${SICK}|can't breathe|cannot breathe)\\b.{0,80}\\bfumes?`,
  `fumes?\\b.{0,80}\\b${SICK}`,
  `${AIR} (?:makes?|made|is making|are making) (?:me|him|her|us|[a-z]+) (?:feel )?${SICK}`,
  `(?:ouch|oww+|argh|yow|yikes)\\b.{0,80}\\b(?:touched|grabbed|grazed|leaned on|brushed against|slipped|burnt?|sliced|stabbed|pinched)`,
  `(?:touched|grabbed|grazed|leaned on|leant on|brushed against|slipped|burnt?|sliced|stabbed|pinched)\\b.{0,80}\\b(?:ouch|oww+|argh|yow|yikes)`,
  '(?:bleeding|first degree|got hurt|is hurt|was hurt|injured|injury|injuries|passed out|fainted|needs stitches|ambulance)',
);
/** Nobody was hurt: it nearly happened, it is warned of, or it is an idiom. */
const SPARED =
  /\b(?:nearly|almost|could have|might have|about to|careful|watch out|mind|avoid|so (?:that )?(?:nobody|no one)|nobody (?:was|got|is)|no one (?:was|got|is)|don't|do not|didn't|without)\b|\b(?:caught|hit|catch\w*) (?:my|his|her|our|the|your) eyes?\b|\bin (?:my|his|her|their) hands?\b/u;

/** Which first aid; the eye before all, since it is often a burn or a cut as well. */
const KINDS: readonly (readonly [InjuryKind, RegExp])[] = [
  ['eye', /\beyes?\b/u],
  ['fumes', new RegExp(`\\bfumes?\\b|\\bbreathe\\b|\\b${SICK}\\b`, 'u')],
  ['cut', /\b(?:cut|sliced|slashed|gashed|stabbed|jabbed|nicked|pricked|pierced|bleed\w*|bled|stitches|splinter|shard|sliver|wire|needle|blade)\b/u],
  ['burn', /\b(?:burn\w*|scald\w*|scorch\w*|sing\w*|sear\w*|blister\w*|(?:touched|grabbed|leaned on|leant on|brushed against)\b.*\b(?:nozzle|hot end|heater|bed|block|hot))\b/u],
]; // prettier-ignore

/** A word that every row needs: most messages hold none, and no row is tried on them. */
const HINTS = new RegExp(`\\b(?:${BODY}|${SELF}|${SICK}|head|ouch|oww+|argh|yow|yikes|breathe|bleeding|degree|hurt|injur\\w+|passed|fainted|stitches|ambulance|hair|sleeve|scarf|glove|necklace)\\b`, 'u'); // prettier-ignore
const hurts = (text: string): boolean => HINTS.test(text) && TOLD.test(text) && !SPARED.test(text);

/** Sentences of one message, each with the clauses that it is made of. */
function sentencesOf(scenes: readonly Scene[]): string[] {
  const said = new Map<number, string[]>();
  for (const scene of scenes) {
    const known = said.get(scene.clause.sentence);
    if (known) known.push(textOf(scene));
    else said.set(scene.clause.sentence, [textOf(scene)]);
  }
  return [...said.values()].map((texts) => texts.join(' '));
}

/** A clause alone decides before its sentence: a word that spares stands in its own clause. */
export const isHurt = (scene: Scene): boolean => hurts(textOf(scene));
const told = new WeakMap<readonly Scene[], string[]>();
function tellsOf(scenes: readonly Scene[]): string[] {
  const known = told.get(scenes) ?? seek(scenes);
  told.set(scenes, known);
  return known;
}
const seek = (scenes: readonly Scene[]): string[] => [
  ...scenes.filter(isHurt).map(textOf),
  ...sentencesOf(scenes).filter(hurts),
];

export const readInjury = (scenes: readonly Scene[]): boolean => tellsOf(scenes).length > 0;

/** What kind of injury is told, as far as the words say; undefined where nobody is hurt or none is named. */
export const injuryKind = (scenes: readonly Scene[]): InjuryKind | undefined => {
  const hurt = tellsOf(scenes).join(' ');
  return KINDS.find(([, words]) => words.test(hurt))?.[0];
};
