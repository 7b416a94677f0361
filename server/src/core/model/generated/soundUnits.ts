// Generated from schemas/ by npm run generate; do not edit.
import type { Sound } from '../sound';

const sound0: Sound = { text: {"pattern":"^1$"} };
const sound1: Sound = { text: {"is":"id"} };
const sound2: Sound = { text: {} };
const sound3: Sound = { text: {}, map: { keys: { "text": sound2, "en": sound2, "de": sound2, "es": sound2 }, required: ["text"] } };
const sound4: Sound = { any: true };
const sound5: Sound = { map: { keys: {  }, others: sound4, required: [], ids: true } };
const sound6: Sound = { text: {}, map: { keys: {  }, others: sound2, required: [] } };
const sound7: Sound = { map: { keys: {  }, others: sound6, required: [], ids: true } };
const sound8: Sound = { map: { keys: { "witnessmark": sound0, "family": sound1, "name": sound3, "max-speed": sound2, "variants": sound5, "options": sound5, "identify": sound5, "base": sound2, "parts": sound5, "assemblies": sound5, "balance-groups": sound5, "checks": sound5, "dimensions": sound7, "limits": sound5, "readings": sound5, "figures": sound5, "note": sound3 }, required: ["witnessmark","family","name","variants","parts"] } };
const sound9: Sound = { map: { keys: { "name": sound3, "note": sound3 }, required: ["name"] } };
const sound10: Sound = { text: {}, list: { of: sound2, least: 1 } };
const sound11: Sound = { map: { keys: { "name": sound3, "variants": sound10, "needs": sound10, "excludes": sound10, "note": sound3 }, required: ["name"] } };
const sound12: Sound = { named: "condition" };
const sound13: Sound = { text: {}, list: { of: sound12, least: 1 }, map: { keys: { "all": sound12, "any": sound12, "none": sound12 }, required: [], least: 1 } };
const sound14: Sound = { list: { of: sound2, least: 2 } };
const sound15: Sound = { map: { keys: { "name": sound3, "values": sound14, "when": sound13, "unless": sound13, "figure": sound2, "note": sound3 }, required: ["name","values"] } };
const sound16: Sound = { text: {}, list: { of: sound2 } };
const sound17: Sound = { text: {"among":["nut","bolt","screw","stud","washer","clamp","retaining-ring","seal-ring","o-ring","gasket","bearing","thrust-bearing","collar","spacer","wheel","shaft","housing","plate","shield","pin","plug","fitting","pipe","spring","actuator","lever","rod","vane","sensor","plate-label"]} };
const sound18: Sound = { text: {"pattern":"^\\d+$"} };
const sound19: Sound = { text: {"pattern":"^[1-9]\\d*$"}, map: { keys: {  }, others: sound18, required: [] } };
const sound20: Sound = { text: {"pattern":"^[1-9]\\d*$"} };
const sound21: Sound = { text: {}, list: { of: sound2 }, map: { keys: {  }, others: sound20, required: [] } };
const sound22: Sound = { text: {"among":["off","loose"]} };
const sound23: Sound = { text: {"among":["left","right"]} };
const sound24: Sound = { text: {"pattern":"^(left|right)$"}, map: { keys: {  }, others: sound23, required: [] } };
const sound25: Sound = { text: {"among":["hexagon","socket-hexagon","hexalobular","bi-hexagon","square","slot","cross","pin-holes","knurl"]} };
const sound26: Sound = { text: {"among":["clean","inspect","lubricate","threadlock","heat","cool","mark","measure"]} };
const sound27: Sound = { text: {"pattern":"^(clean|inspect|lubricate|threadlock|heat|cool|mark|measure)$"}, list: { of: sound26 } };
const sound28: Sound = { text: {"among":["always","on-condition","never"]} };
const sound29: Sound = { text: {"pattern":"^(true|false)$"} };
const sound30: Sound = { text: {"among":["wash","ultrasonic","brush","wire-brush","wipe","blast","caustic","solvent","steam","compressed-air"]} };
const sound31: Sound = { text: {"pattern":"^(wash|ultrasonic|brush|wire-brush|wipe|blast|caustic|solvent|steam|compressed-air)$"}, list: { of: sound30 } };
const sound32: Sound = { map: { keys: { "with": sound2, "bore": sound2, "shaft": sound2, "class": sound2, "interference": sound2, "clearance": sound2 }, required: [] } };
const sound33: Sound = { text: {"among":["static","dynamic"]} };
const sound34: Sound = { map: { keys: { "depth": sound2, "width": sound2, "diameter": sound2, "motion": sound33 }, required: [] } };
const sound35: Sound = { map: { keys: { "name": sound3, "also": sound16, "kind": sound17, "number": sound6, "quantity": sound19, "when": sound13, "unless": sound13, "instead-of": sound10, "sits-on": sound21, "fastened-by": sound10, "frees-when": sound22, "seals": sound10, "mates-with": sound10, "thread": sound6, "hand": sound24, "property-class": sound6, "across-flats": sound6, "drive": sound25, "drive-size": sound2, "bearing-diameter": sound6, "friction": sound2, "torque": sound6, "angle": sound6, "prevailing-torque": sound6, "in-order": sound16, "hold": sound3, "locked-by": sound10, "behind": sound10, "before-fitting": sound27, "locate": sound3, "orient": sound3, "sizes": sound2, "size-step": sound2, "renew": sound28, "comes-with": sound10, "serial": sound29, "never-clean-with": sound31, "temporary": sound29, "maker-mark": sound29, "fit": sound32, "material": sound2, "expansion": sound2, "max-temperature": sound6, "mass": sound6, "section": sound2, "inside-diameter": sound2, "groove": sound34, "note": sound3 }, required: ["name"] } };
const sound36: Sound = { map: { keys: { "name": sound3, "parts": sound10, "note": sound3 }, required: ["name","parts"] } };
const sound37: Sound = { text: {"among":["rotor","plane"]} };
const sound38: Sound = { map: { keys: { "name": sound3, "members": sound10, "keep-position": sound29, "grade": sound2, "mass": sound2, "planes": sound20, "permissible": sound2, "permissible-for": sound37, "note": sound3 }, required: ["members"] } };
const sound39: Sound = { map: { keys: { "say": sound3, "after": sound10, "accept": sound6, "figure": sound2, "when": sound13, "unless": sound13, "note": sound3 }, required: ["say"] } };
const sound40: Sound = { text: {}, list: { of: sound3 }, map: { keys: { "text": sound2, "en": sound2, "de": sound2, "es": sound2 }, required: ["text"] } };
const sound41: Sound = { map: { keys: { "name": sound3, "accept": sound6, "from": sound16, "void-by": sound10, "places": sound40, "figure": sound2, "when": sound13, "unless": sound13, "note": sound3 }, required: ["name","accept"] } };
const sound42: Sound = { text: {"among":["torque","force","length","angle","temperature","pressure","mass","unbalance","time","rotational-speed","voltage","current","resistance","flow","ratio"]} };
const sound43: Sound = { map: { keys: { "name": sound3, "quantity": sound42, "accept": sound6, "note": sound3 }, required: ["name"] } };
const sound44: Sound = { map: { keys: { "file": sound2, "alt": sound3, "caption": sound3 }, required: ["file"] } };
const sound45: Sound = { list: { of: sound4 } };
const sound46: Sound = { map: { keys: { "witnessmark": sound0, "kit": sound2, "name": sound3, "revision": sound2, "family": sound2, "lines": sound45, "note": sound3 }, required: ["witnessmark","kit","family","lines"] } };
const sound47: Sound = { map: { keys: { "item": sound2, "part": sound2, "number": sound2, "name": sound3, "quantity": sound20, "when": sound13, "unless": sound13, "replaces": sound16, "superseded-by": sound2, "note": sound3 }, required: ["part","quantity"] } };
const sound48: Sound = { map: { keys: { "witnessmark": sound0, "stores": sound2, "tools": sound5, "consumables": sound5, "note": sound3 }, required: ["witnessmark","stores"] } };
const sound49: Sound = { text: {"among":["torque-wrench","torque-screwdriver","socket","bit","crow-foot","spanner","hexagon-key","screwdriver","extension","ratchet","t-handle","angle-gauge","ring-pliers","pliers","ring-compressor","puller","press","arbor","holding-fixture","soft-hammer","gauge","micrometer","calliper","bore-gauge","feeler","indicator","scale","balance-machine","oven","hot-plate","thermometer","pressure-source","pressure-gauge","vacuum-source","wash-tank","ultrasonic-bath","blast-cabinet","brush","scraper","marker","lamp","lifting-gear","other"]} };
const sound50: Sound = { text: {"among":["right","both"]} };
const sound51: Sound = { text: {"pattern":"^\\d{4}-\\d{2}-\\d{2}$","is":"day"} };
const sound52: Sound = { map: { keys: { "name": sound3, "also": sound16, "kind": sound49, "number": sound2, "size": sound2, "drive-size": sound2, "resolution": sound2, "range": sound2, "accuracy": sound2, "square": sound2, "length": sound2, "offset": sound2, "set-at": sound2, "direction": sound50, "torque-type": sound2, "calibration-due": sound51, "note": sound3 }, required: ["name"] } };
const sound53: Sound = { text: {"among":["threadlocker","sealant","oil","grease","anti-seize","assembly-paste","solvent","cleaner","penetrant","marking-compound","paint","blast-media","wipe","plug-cap","wire","abrasive","other"]} };
const sound54: Sound = { text: {"pattern":"^(EU)?H\\d{3}[A-Za-z]{0,2}(\\+H\\d{3})*$"} };
const sound55: Sound = { text: {}, list: { of: sound54 } };
const sound56: Sound = { text: {"among":["danger","warning"]} };
const sound57: Sound = { map: { keys: { "name": sound3, "also": sound16, "kind": sound53, "number": sound2, "cure": sound2, "max-temperature": sound2, "hazards": sound55, "signal-word": sound56, "data-sheet": sound2, "expires": sound51, "note": sound3 }, required: ["name"] } };
const sound58: Sound = { text: {"among":["draft","released","withdrawn"]} };
const sound59: Sound = { map: { keys: { "variants": sound10, "options": sound16 }, required: [] } };
const sound60: Sound = { map: { keys: { "witnessmark": sound0, "procedure": sound2, "title": sound3, "revision": sound2, "status": sound58, "family": sound2, "kit": sound16, "stores": sound16, "covers": sound59, "adds": sound16, "starts": sound2, "ends": sound2, "prepared-by": sound2, "checked-by": sound2, "approved-by": sound2, "revisions": sound45, "tools": sound16, "consumables": sound16, "protective-equipment": sound40, "readings": sound5, "figures": sound5, "before-you-start": sound45, "phases": sound45, "concessions": sound45, "at-installation": sound40, "note": sound3 }, required: ["witnessmark","procedure","title","revision","family","phases"] } };
const sound61: Sound = { map: { keys: { "revision": sound2, "date": sound51, "what": sound3, "by": sound2 }, required: ["revision","what"] } };
const sound62: Sound = { text: {}, map: { keys: { "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound2, "when": sound13, "unless": sound13, "note": sound3 }, required: [] } };
const sound63: Sound = { map: { keys: { "phase": sound3, "when": sound13, "unless": sound13, "warning": sound40, "caution": sound40, "notice": sound40, "note": sound3, "steps": sound45 }, required: ["phase","steps"] } };
const sound64: Sound = { text: {"among":["fitter","inspector","supervisor","customer"]} };
const sound65: Sound = { map: { keys: { "step": sound1, "title": sound3, "when": sound13, "unless": sound13, "sign": sound64, "people": sound20, "optional": sound29, "figure": sound10, "warning": sound40, "caution": sound40, "notice": sound40, "note": sound3, "do": sound45 }, required: ["step","title","do"] } };
const sound66: Sound = { text: {}, map: { keys: { "tool": sound2, "count": sound20 }, required: ["tool"] } };
const sound67: Sound = { text: {}, list: { of: sound66 }, map: { keys: { "tool": sound2, "count": sound20 }, required: ["tool"] } };
const sound68: Sound = { map: { keys: { "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["say"] } };
const sound69: Sound = { text: {}, map: { keys: { "at": sound3, "with": sound67 }, required: ["at"] } };
const sound70: Sound = { map: { keys: { "loosen": sound10, "hold": sound69, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["loosen"] } };
const sound71: Sound = { map: { keys: { "remove": sound10, "hold": sound69, "count": sound20, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["remove"] } };
const sound72: Sound = { map: { keys: { "install": sound10, "count": sound20, "place": sound2, "orient": sound3, "locate": sound3, "trial": sound29, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["install"] } };
const sound73: Sound = { map: { keys: { "seat": sound10, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["seat"] } };
const sound74: Sound = { list: { of: sound2 } };
const sound75: Sound = { map: { keys: { "tighten": sound10, "torque": sound6, "angle": sound6, "passes": sound74, "in-order": sound16, "plus": sound2, "count": sound20, "hold": sound69, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["tighten"] } };
const sound76: Sound = { map: { keys: { "apply": sound10, "to": sound10, "at": sound3, "amount": sound3, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["apply"] } };
const sound77: Sound = { map: { keys: { "clean": sound10, "at": sound3, "by": sound30, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["clean"] } };
const sound78: Sound = { map: { keys: { "identify": sound2, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["identify"] } };
const sound79: Sound = { map: { keys: { "replace": sound10, "reject": sound29, "go-to": sound2, "at-most": sound20, "then": sound3, "do": sound45, "say": sound3, "note": sound3 }, required: [] } };
const sound80: Sound = { map: { keys: { "inspect": sound10, "look-for": sound40, "if-not": sound79, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["inspect"] } };
const sound81: Sound = { map: { keys: { "measure": sound2, "accept": sound6, "places": sound40, "if-not": sound79, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["measure"] } };
const sound82: Sound = { map: { keys: { "calculate": sound2, "from": sound16, "accept": sound6, "if-not": sound79, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["calculate"] } };
const sound83: Sound = { map: { keys: { "choose": sound2, "size": sound16, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["choose"] } };
const sound84: Sound = { text: {"among":["scribe","punch","paint","etch"]} };
const sound85: Sound = { map: { keys: { "mark": sound10, "by": sound84, "across": sound10, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["mark"] } };
const sound86: Sound = { map: { keys: { "align": sound10, "to": sound10, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["align"] } };
const sound87: Sound = { map: { keys: { "press": sound10, "force": sound2, "to": sound3, "place": sound2, "orient": sound3, "locate": sound3, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["press"] } };
const sound88: Sound = { map: { keys: { "heat": sound10, "until": sound2, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["heat"] } };
const sound89: Sound = { map: { keys: { "cool": sound10, "until": sound2, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["cool"] } };
const sound90: Sound = { map: { keys: { "balance": sound2, "grade": sound2, "accept": sound6, "if-not": sound79, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["balance"] } };
const sound91: Sound = { map: { keys: { "adjust": sound10, "until": sound3, "accept": sound6, "back-off": sound2, "if-not": sound79, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["adjust"] } };
const sound92: Sound = { map: { keys: { "check": sound3, "accept": sound6, "if-not": sound79, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["check"] } };
const sound93: Sound = { map: { keys: { "wait": sound2, "of": sound10, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["wait"] } };
const sound94: Sound = { map: { keys: { "send": sound10, "to": sound3, "certificate": sound3, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["send"] } };
const sound95: Sound = { map: { keys: { "receive": sound10, "certificate": sound3, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["receive"] } };
const sound96: Sound = { map: { keys: { "return": sound10, "to": sound3, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["return"] } };
const sound97: Sound = { map: { keys: { "discard": sound10, "to": sound3, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["discard"] } };
const sound98: Sound = { map: { keys: { "record": sound3, "serial": sound10, "with": sound67, "using": sound10, "say": sound3, "warning": sound40, "caution": sound40, "notice": sound40, "figure": sound10, "when": sound13, "unless": sound13, "note": sound3 }, required: ["record"] } };
const sound99: Sound = { map: { keys: { "rule": sound2, "at": sound2, "about": sound16, "because": sound3, "by": sound2, "until": sound51 }, required: ["rule","because","by","until"] } };
const sound100: Sound = { text: {"among":["error","warning","info","off"]} };
const sound101: Sound = { map: { keys: {  }, others: sound100, required: [] } };
const sound102: Sound = { text: {}, list: { of: sound2, most: 2 } };
const sound103: Sound = { map: { keys: { "torque": sound102, "length": sound102, "temperature": sound102, "pressure": sound102, "force": sound102, "mass": sound102, "unbalance": sound102 }, required: [] } };
const sound104: Sound = { text: {"among":["a4","letter"]} };
const sound105: Sound = { text: {"among":["single","double"]} };
const sound106: Sound = { text: {"among":["en","de","es"]} };
const sound107: Sound = { map: { keys: { "skip": sound2 }, required: [] } };
const sound108: Sound = { map: { keys: { "witnessmark": sound0, "severities": sound101, "units": sound103, "paper": sound104, "sides": sound105, "language": sound106, "written-in": sound106, "revision-letters": sound107, "note": sound3 }, required: ["witnessmark"] } };

export const SOUND_UNITS: Readonly<Record<string, Sound>> = {
  'family': sound8,
  'family/variant': sound9,
  'family/option': sound11,
  'family/identify': sound15,
  'family/part': sound35,
  'family/assembly': sound36,
  'family/balance-group': sound38,
  'family/check': sound39,
  'family/limit': sound41,
  'family/reading': sound43,
  'family/figure': sound44,
  'kit': sound46,
  'kit/line': sound47,
  'stores': sound48,
  'stores/tool': sound52,
  'stores/consumable': sound57,
  'procedure': sound60,
  'procedure/revision': sound61,
  'procedure/notice-line': sound62,
  'procedure/phase': sound63,
  'procedure/step': sound65,
  'procedure/sentence': sound68,
  'procedure/verb-loosen': sound70,
  'procedure/verb-remove': sound71,
  'procedure/verb-install': sound72,
  'procedure/verb-seat': sound73,
  'procedure/verb-tighten': sound75,
  'procedure/verb-apply': sound76,
  'procedure/verb-clean': sound77,
  'procedure/verb-identify': sound78,
  'procedure/verb-inspect': sound80,
  'procedure/verb-measure': sound81,
  'procedure/verb-calculate': sound82,
  'procedure/verb-choose': sound83,
  'procedure/verb-mark': sound85,
  'procedure/verb-align': sound86,
  'procedure/verb-press': sound87,
  'procedure/verb-heat': sound88,
  'procedure/verb-cool': sound89,
  'procedure/verb-balance': sound90,
  'procedure/verb-adjust': sound91,
  'procedure/verb-check': sound92,
  'procedure/verb-wait': sound93,
  'procedure/verb-send': sound94,
  'procedure/verb-receive': sound95,
  'procedure/verb-return': sound96,
  'procedure/verb-discard': sound97,
  'procedure/verb-record': sound98,
  'procedure/concession': sound99,
  'procedure/reading': sound43,
  'procedure/figure': sound44,
  'settings': sound108,
};

export const SOUND_BY_NAME: Readonly<Record<string, Sound>> = {
  'condition': sound13,
};
