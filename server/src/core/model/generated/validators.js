// Generated from schemas/ by npm run generate; do not edit.
"use strict";
export const family = validate52;
const schema19 = {"$schema":"https://json-schema.org/draft/2020-12/schema","title":"Witnessmark family","description":"A family of turbochargers: variants, options, parts and how they hold each other, threads, dimensions, limits and checks.","type":"object","additionalProperties":false,"required":["witnessmark","family","name","variants","parts"],"properties":{"witnessmark":{"description":"Version of the document format. Always 1.","type":"string","pattern":"^1$"},"family":{"description":"Id of the family.","type":"string","x-declares":"family"},"name":{"description":"Name of the family.","$ref":"common.schema.json#/$defs/prose"},"max-speed":{"description":"Highest speed of the rotor in service.","type":"string","x-quantity":"rotational-speed"},"variants":{"description":"The variants by id.","type":"object","x-id":"variant","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"options":{"description":"What a unit may have beyond its variant.","type":"object","x-id":"option","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"identify":{"description":"What only the bench can tell.","type":"object","x-id":"outcome","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"base":{"description":"The part on which everything else sits, straight or through other parts.","type":"string","x-ref":"part"},"parts":{"description":"The parts by id.","type":"object","x-id":"part","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"assemblies":{"description":"Sub-assemblies at which a procedure may start or end.","type":"object","x-id":"assembly","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"balance-groups":{"description":"Parts that are balanced together.","type":"object","x-id":"balance-group","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"checks":{"description":"Checks that a procedure calls by id.","type":"object","x-id":"check","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"dimensions":{"description":"Dimensions with their tolerances.","type":"object","x-id":"dimension","propertyNames":{"x-pattern":"id"},"additionalProperties":{"description":"A dimension, one for all or by build.","type":["string","object"],"x-quantity":"length","x-by-build":true,"additionalProperties":{"type":"string"}}},"limits":{"description":"What is measured against what.","type":"object","x-id":"limit","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"readings":{"description":"Values that are read and used later.","type":"object","x-id":"reading","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"figures":{"description":"Figures by id.","type":"object","x-id":"figure","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"$defs":{"variant":{"description":"A variant of the family.","type":"object","properties":{"name":{"description":"Name of the variant as on its plate.","$ref":"common.schema.json#/$defs/prose"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true},"option":{"description":"An option: what a unit may have beyond its variant.","type":"object","properties":{"name":{"description":"Name of the option.","$ref":"common.schema.json#/$defs/prose"},"variants":{"description":"Variants that can have it; all where none is named.","type":["string","array"],"x-ref":"variant","items":{"type":"string"},"minItems":1},"needs":{"description":"Options it cannot be without.","type":["string","array"],"x-ref":"option","items":{"type":"string"},"minItems":1},"excludes":{"description":"Options it cannot be together with.","type":["string","array"],"x-ref":"option","items":{"type":"string"},"minItems":1},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true},"identify":{"description":"What only the bench can tell.","type":"object","properties":{"name":{"description":"What is found out, as the sheet prints it.","$ref":"common.schema.json#/$defs/prose"},"values":{"description":"What it can turn out to be.","type":"array","items":{"type":"string"},"minItems":2},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"figure":{"description":"A figure that shows how to tell.","type":"string","x-ref":"figure"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name","values"],"additionalProperties":false,"x-own":true},"part":{"description":"A part of the unit.","type":"object","properties":{"name":{"description":"What the sheet calls the part, in lower case, without an article.","$ref":"common.schema.json#/$defs/prose"},"also":{"description":"Other names the trade uses for it.","type":["string","array"],"items":{"type":"string"}},"kind":{"description":"What sort of part it is.","type":"string","enum":["nut","bolt","screw","stud","washer","clamp","retaining-ring","seal-ring","o-ring","gasket","bearing","thrust-bearing","collar","spacer","wheel","shaft","housing","plate","shield","pin","plug","fitting","pipe","spring","actuator","lever","rod","vane","sensor","plate-label"]},"number":{"description":"The maker's part number, exactly as printed.","type":["string","object"],"x-by-build":true,"additionalProperties":{"type":"string"}},"quantity":{"description":"How many pieces of it the unit has.","type":["string","object"],"x-by-build":true,"x-count":true,"additionalProperties":{"type":"string","pattern":"^\\d+$"},"pattern":"^[1-9]\\d*$"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"instead-of":{"description":"Parts whose place it takes on the builds that have it.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"sits-on":{"description":"The part it is carried by: one, a list, or a map from part to the number of pieces there.","type":["string","array","object"],"x-ref":"part","x-counted":true,"items":{"type":"string"},"additionalProperties":{"type":"string","pattern":"^[1-9]\\d*$"}},"fastened-by":{"description":"Fasteners that hold it.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"frees-when":{"description":"Whether its fasteners must come off or only be loose before it can be removed; on a fastener: what it needs for the parts it holds.","type":"string","enum":["off","loose"]},"seals":{"description":"Parts whose joint it seals; opening that joint spends it.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"mates-with":{"description":"The part whose thread it is screwed to.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"thread":{"description":"Thread designation as ISO 965-1 or ASME B1.1 writes it, for example M5×0.8 or 1/4-28 UNF-2A.","type":["string","object"],"x-by-build":true,"additionalProperties":{"type":"string"}},"hand":{"description":"Which way the thread runs. Left: turn counter-clockwise to tighten.","type":["string","object"],"pattern":"^(left|right)$","x-choices":["left","right"],"x-by-build":true,"additionalProperties":{"type":"string","enum":["left","right"]}},"property-class":{"description":"Property class or grade as marked on the fastener, for example 8.8, 10, A2-70.","type":["string","object"],"x-by-build":true,"additionalProperties":{"type":"string"}},"across-flats":{"description":"Width across flats of its hexagon or of its socket drive.","type":["string","object"],"x-quantity":"length","x-by-build":true,"additionalProperties":{"type":"string"}},"drive":{"description":"How a tool takes hold of it.","type":"string","enum":["hexagon","socket-hexagon","hexalobular","bi-hexagon","square","slot","cross","pin-holes","knurl"]},"drive-size":{"description":"Size of a drive that has no width across flats, for example T30.","type":"string"},"bearing-diameter":{"description":"Outside diameter of the face under its head.","type":["string","object"],"x-quantity":"length","x-by-build":true,"additionalProperties":{"type":"string"}},"friction":{"description":"Friction coefficient of thread and face where the maker states one, in per cent.","type":"string","x-quantity":"ratio"},"torque":{"description":"Tightening torque, with unit and tolerance, as the maker states it.","type":["string","object"],"x-quantity":"torque","x-by-build":true,"additionalProperties":{"type":"string"}},"angle":{"description":"Angle turned after the torque, as the maker states it.","type":["string","object"],"x-quantity":"angle","x-by-build":true,"additionalProperties":{"type":"string"}},"prevailing-torque":{"description":"Torque needed to turn a locking fastener before it seats.","type":["string","object"],"x-quantity":"torque","x-by-build":true,"additionalProperties":{"type":"string"}},"in-order":{"description":"Order in which the pieces are tightened.","type":["string","array"],"items":{"type":"string"}},"hold":{"description":"Where it must be counter-held while it is turned.","$ref":"common.schema.json#/$defs/prose"},"locked-by":{"description":"What locks its adjustment.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"behind":{"description":"Parts that must be off before it can be reached.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"before-fitting":{"description":"What must be done to it, since it came off or out of its bag, before it is fitted.","type":["string","array"],"pattern":"^(clean|inspect|lubricate|threadlock|heat|cool|mark|measure)$","items":{"type":"string","enum":["clean","inspect","lubricate","threadlock","heat","cool","mark","measure"]},"x-choices":["clean","inspect","lubricate","threadlock","heat","cool","mark","measure"]},"locate":{"description":"What it locates on: pin, notch, groove.","$ref":"common.schema.json#/$defs/prose"},"orient":{"description":"How it faces when it is fitted.","$ref":"common.schema.json#/$defs/prose"},"sizes":{"description":"Range of the sizes it comes in.","type":"string","x-quantity":"length"},"size-step":{"description":"Step between its sizes.","type":"string","x-quantity":"length"},"renew":{"description":"Whether it is always renewed, renewed on condition, or never (the default).","type":"string","enum":["always","on-condition","never"]},"comes-with":{"description":"Parts that are renewed or refitted only together with it, as a set.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"serial":{"description":"Its serial number is recorded.","type":"string","pattern":"^(true|false)$"},"never-clean-with":{"description":"Ways of cleaning that would spoil it.","type":["string","array"],"pattern":"^(wash|ultrasonic|brush|wire-brush|wipe|blast|caustic|solvent|steam|compressed-air)$","items":{"type":"string","enum":["wash","ultrasonic","brush","wire-brush","wipe","blast","caustic","solvent","steam","compressed-air"]},"x-choices":["wash","ultrasonic","brush","wire-brush","wipe","blast","caustic","solvent","steam","compressed-air"]},"temporary":{"description":"A blank, plug or pin that must not stay in the finished unit.","type":"string","pattern":"^(true|false)$"},"maker-mark":{"description":"It carries a mark of its maker to be aligned by.","type":"string","pattern":"^(true|false)$"},"fit":{"description":"The fit on the part it sits on.","type":"object","properties":{"with":{"description":"The other part.","type":"string","x-ref":"part"},"bore":{"description":"The bore's dimension.","type":"string","x-ref":"dimension"},"shaft":{"description":"The shaft's dimension.","type":"string","x-ref":"dimension"},"class":{"description":"The fit as ISO 286-1 writes it, with the nominal size, for example 25 H7/p6.","type":"string"},"interference":{"description":"Interference on the diameter, as the drawing states it: how much larger the shaft is than the bore.","type":"string","x-quantity":"length"},"clearance":{"description":"Clearance wanted while it is slid on hot.","type":"string","x-quantity":"length"}},"required":[],"additionalProperties":false},"material":{"description":"Material, as its drawing states it.","type":"string"},"expansion":{"description":"Coefficient of linear expansion, in 10⁻⁶ per kelvin.","type":"string"},"max-temperature":{"description":"Highest temperature it stands while it is fitted.","type":["string","object"],"x-quantity":"temperature","x-by-build":true,"additionalProperties":{"type":"string"}},"mass":{"description":"Its mass.","type":["string","object"],"x-quantity":"mass","x-by-build":true,"additionalProperties":{"type":"string"}},"section":{"description":"Cross-section of an O-ring.","type":"string","x-quantity":"length"},"inside-diameter":{"description":"Inside diameter of an O-ring.","type":"string","x-quantity":"length"},"groove":{"description":"The groove of an O-ring.","type":"object","properties":{"depth":{"description":"Depth from the groove's floor to the mating face.","type":"string","x-quantity":"length"},"width":{"description":"Width of the groove.","type":"string","x-quantity":"length"},"diameter":{"description":"Diameter of the groove's floor.","type":"string","x-quantity":"length"},"motion":{"description":"Whether the joint moves.","type":"string","enum":["static","dynamic"]}},"required":[],"additionalProperties":false},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true},"assembly":{"description":"A sub-assembly.","type":"object","properties":{"name":{"description":"Name of the sub-assembly.","$ref":"common.schema.json#/$defs/prose"},"parts":{"description":"The parts it holds.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name","parts"],"additionalProperties":false,"x-own":true},"balance-group":{"description":"Parts that are balanced together.","type":"object","properties":{"name":{"description":"Name of the group.","$ref":"common.schema.json#/$defs/prose"},"members":{"description":"Its parts.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"keep-position":{"description":"Re-used members go back in the position to each other that they were balanced in.","type":"string","pattern":"^(true|false)$"},"grade":{"description":"Balance grade as ISO 21940-11 writes it, for example G 6.3.","type":"string"},"mass":{"description":"Mass of the group.","type":"string","x-quantity":"mass"},"planes":{"description":"Number of correction planes.","type":"string","pattern":"^[1-9]\\d*$"},"permissible":{"description":"Permissible residual unbalance, as the maker states it.","type":"string","x-quantity":"unbalance"},"permissible-for":{"description":"Whether the permissible unbalance, and what a procedure accepts, is meant for the whole rotor (the default) or for each correction plane.","type":"string","enum":["rotor","plane"]},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["members"],"additionalProperties":false,"x-own":true},"check":{"description":"A check by id.","type":"object","properties":{"say":{"description":"What must be found true.","$ref":"common.schema.json#/$defs/prose"},"after":{"description":"Parts whose last touch the check must come after.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"accept":{"description":"What is acceptable where a value is read.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"figure":{"description":"A figure that shows it.","type":"string","x-ref":"figure"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["say"],"additionalProperties":false,"x-own":true},"limit":{"description":"What is measured against what.","type":"object","properties":{"name":{"description":"What is measured, as the sheet prints it.","$ref":"common.schema.json#/$defs/prose"},"accept":{"description":"What is acceptable.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"from":{"description":"Signed dimensions that it results from, for example [+bearing-bore, -shaft-journal].","type":["string","array"],"x-ref":"dimension","x-signed":true,"items":{"type":"string"}},"void-by":{"description":"Parts that make a result worthless once they are touched again.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"places":{"description":"Where it is measured: a number of places or their names.","$ref":"common.schema.json#/$defs/prose-list"},"figure":{"description":"A figure that shows how to measure it.","type":"string","x-ref":"figure"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name","accept"],"additionalProperties":false,"x-own":true},"reading":{"description":"A value that is read on the bench and used later.","type":"object","properties":{"name":{"description":"What is read, as the sheet prints it.","$ref":"common.schema.json#/$defs/prose"},"quantity":{"description":"The dimension of the value.","type":"string","enum":["torque","force","length","angle","temperature","pressure","mass","unbalance","time","rotational-speed","voltage","current","resistance","flow","ratio"]},"accept":{"description":"What is acceptable.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true},"figure":{"description":"A figure.","type":"object","properties":{"file":{"description":"Path of the SVG file, relative to this document.","type":"string","x-path":"figure"},"alt":{"description":"What the figure shows, in words, for whoever cannot see it.","$ref":"common.schema.json#/$defs/prose"},"caption":{"description":"The line printed below the figure.","$ref":"common.schema.json#/$defs/prose"}},"required":["file"],"additionalProperties":false,"x-own":true}}};
const func1 = Object.prototype.hasOwnProperty;
const pattern3 = new RegExp("^1$", "u");
const schema21 = {"description":"Text for people. `<id>` names a part, tool, consumable, limit, check, step or figure. A map gives the text with its translations; a name in German or Spanish may have its article, and in German its plural: `die Nuss, die Nüsse`.","type":["string","object"],"x-prose":true,"properties":{"text":{"description":"The text in the language of the document.","type":"string"},"en":{"description":"The text in English.","type":"string"},"de":{"description":"The text in German.","type":"string"},"es":{"description":"The text in Spanish.","type":"string"}},"required":["text"],"additionalProperties":false};

function validate54(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate54.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema21.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.text === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "text"},message:"must have required property '"+"text"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "text") || (key0 === "en")) || (key0 === "de")) || (key0 === "es"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.text !== undefined){
if(typeof data.text !== "string"){
const err3 = {instancePath:instancePath+"/text",schemaPath:"#/properties/text/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.en !== undefined){
if(typeof data.en !== "string"){
const err4 = {instancePath:instancePath+"/en",schemaPath:"#/properties/en/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.de !== undefined){
if(typeof data.de !== "string"){
const err5 = {instancePath:instancePath+"/de",schemaPath:"#/properties/de/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.es !== undefined){
if(typeof data.es !== "string"){
const err6 = {instancePath:instancePath+"/es",schemaPath:"#/properties/es/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
validate54.errors = vErrors;
return errors === 0;
}
validate54.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate52(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate52.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.witnessmark === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "witnessmark"},message:"must have required property '"+"witnessmark"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.family === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "family"},message:"must have required property '"+"family"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.name === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data.variants === undefined){
const err3 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "variants"},message:"must have required property '"+"variants"+"'"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
if(data.parts === undefined){
const err4 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "parts"},message:"must have required property '"+"parts"+"'"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema19.properties, key0))){
const err5 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.witnessmark !== undefined){
let data0 = data.witnessmark;
if(typeof data0 === "string"){
if(!pattern3.test(data0)){
const err6 = {instancePath:instancePath+"/witnessmark",schemaPath:"#/properties/witnessmark/pattern",keyword:"pattern",params:{pattern: "^1$"},message:"must match pattern \""+"^1$"+"\""};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
else {
const err7 = {instancePath:instancePath+"/witnessmark",schemaPath:"#/properties/witnessmark/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.family !== undefined){
if(typeof data.family !== "string"){
const err8 = {instancePath:instancePath+"/family",schemaPath:"#/properties/family/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate54(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data["max-speed"] !== undefined){
if(typeof data["max-speed"] !== "string"){
const err9 = {instancePath:instancePath+"/max-speed",schemaPath:"#/properties/max-speed/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data.variants !== undefined){
let data4 = data.variants;
if(data4 && typeof data4 == "object" && !Array.isArray(data4)){
}
else {
const err10 = {instancePath:instancePath+"/variants",schemaPath:"#/properties/variants/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.options !== undefined){
let data5 = data.options;
if(data5 && typeof data5 == "object" && !Array.isArray(data5)){
}
else {
const err11 = {instancePath:instancePath+"/options",schemaPath:"#/properties/options/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data.identify !== undefined){
let data6 = data.identify;
if(data6 && typeof data6 == "object" && !Array.isArray(data6)){
}
else {
const err12 = {instancePath:instancePath+"/identify",schemaPath:"#/properties/identify/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.base !== undefined){
if(typeof data.base !== "string"){
const err13 = {instancePath:instancePath+"/base",schemaPath:"#/properties/base/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data.parts !== undefined){
let data8 = data.parts;
if(data8 && typeof data8 == "object" && !Array.isArray(data8)){
}
else {
const err14 = {instancePath:instancePath+"/parts",schemaPath:"#/properties/parts/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.assemblies !== undefined){
let data9 = data.assemblies;
if(data9 && typeof data9 == "object" && !Array.isArray(data9)){
}
else {
const err15 = {instancePath:instancePath+"/assemblies",schemaPath:"#/properties/assemblies/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data["balance-groups"] !== undefined){
let data10 = data["balance-groups"];
if(data10 && typeof data10 == "object" && !Array.isArray(data10)){
}
else {
const err16 = {instancePath:instancePath+"/balance-groups",schemaPath:"#/properties/balance-groups/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data.checks !== undefined){
let data11 = data.checks;
if(data11 && typeof data11 == "object" && !Array.isArray(data11)){
}
else {
const err17 = {instancePath:instancePath+"/checks",schemaPath:"#/properties/checks/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data.dimensions !== undefined){
let data12 = data.dimensions;
if(data12 && typeof data12 == "object" && !Array.isArray(data12)){
for(const key1 in data12){
let data13 = data12[key1];
if((typeof data13 !== "string") && (!(data13 && typeof data13 == "object" && !Array.isArray(data13)))){
const err18 = {instancePath:instancePath+"/dimensions/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/dimensions/additionalProperties/type",keyword:"type",params:{type: schema19.properties.dimensions.additionalProperties.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
if(data13 && typeof data13 == "object" && !Array.isArray(data13)){
for(const key2 in data13){
if(typeof data13[key2] !== "string"){
const err19 = {instancePath:instancePath+"/dimensions/" + key1.replace(/~/g, "~0").replace(/\//g, "~1")+"/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/dimensions/additionalProperties/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
}
}
}
else {
const err20 = {instancePath:instancePath+"/dimensions",schemaPath:"#/properties/dimensions/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
if(data.limits !== undefined){
let data15 = data.limits;
if(data15 && typeof data15 == "object" && !Array.isArray(data15)){
}
else {
const err21 = {instancePath:instancePath+"/limits",schemaPath:"#/properties/limits/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.readings !== undefined){
let data16 = data.readings;
if(data16 && typeof data16 == "object" && !Array.isArray(data16)){
}
else {
const err22 = {instancePath:instancePath+"/readings",schemaPath:"#/properties/readings/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
if(data.figures !== undefined){
let data17 = data.figures;
if(data17 && typeof data17 == "object" && !Array.isArray(data17)){
}
else {
const err23 = {instancePath:instancePath+"/figures",schemaPath:"#/properties/figures/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data.note !== undefined){
if(!(validate54(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
}
else {
const err24 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
validate52.errors = vErrors;
return errors === 0;
}
validate52.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const family_variant = validate57;
const schema22 = {"description":"A variant of the family.","type":"object","properties":{"name":{"description":"Name of the variant as on its plate.","$ref":"common.schema.json#/$defs/prose"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true};

function validate57(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate57.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!((key0 === "name") || (key0 === "note"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate54(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.note !== undefined){
if(!(validate54(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
validate57.errors = vErrors;
return errors === 0;
}
validate57.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const family_option = validate60;
const schema23 = {"description":"An option: what a unit may have beyond its variant.","type":"object","properties":{"name":{"description":"Name of the option.","$ref":"common.schema.json#/$defs/prose"},"variants":{"description":"Variants that can have it; all where none is named.","type":["string","array"],"x-ref":"variant","items":{"type":"string"},"minItems":1},"needs":{"description":"Options it cannot be without.","type":["string","array"],"x-ref":"option","items":{"type":"string"},"minItems":1},"excludes":{"description":"Options it cannot be together with.","type":["string","array"],"x-ref":"option","items":{"type":"string"},"minItems":1},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true};

function validate60(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate60.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((((key0 === "name") || (key0 === "variants")) || (key0 === "needs")) || (key0 === "excludes")) || (key0 === "note"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate54(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.variants !== undefined){
let data1 = data.variants;
if((typeof data1 !== "string") && (!(Array.isArray(data1)))){
const err2 = {instancePath:instancePath+"/variants",schemaPath:"#/properties/variants/type",keyword:"type",params:{type: schema23.properties.variants.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/variants",schemaPath:"#/properties/variants/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err4 = {instancePath:instancePath+"/variants/" + i0,schemaPath:"#/properties/variants/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
}
if(data.needs !== undefined){
let data3 = data.needs;
if((typeof data3 !== "string") && (!(Array.isArray(data3)))){
const err5 = {instancePath:instancePath+"/needs",schemaPath:"#/properties/needs/type",keyword:"type",params:{type: schema23.properties.needs.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(Array.isArray(data3)){
if(data3.length < 1){
const err6 = {instancePath:instancePath+"/needs",schemaPath:"#/properties/needs/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(typeof data3[i1] !== "string"){
const err7 = {instancePath:instancePath+"/needs/" + i1,schemaPath:"#/properties/needs/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
}
}
if(data.excludes !== undefined){
let data5 = data.excludes;
if((typeof data5 !== "string") && (!(Array.isArray(data5)))){
const err8 = {instancePath:instancePath+"/excludes",schemaPath:"#/properties/excludes/type",keyword:"type",params:{type: schema23.properties.excludes.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
if(Array.isArray(data5)){
if(data5.length < 1){
const err9 = {instancePath:instancePath+"/excludes",schemaPath:"#/properties/excludes/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len2 = data5.length;
for(let i2=0; i2<len2; i2++){
if(typeof data5[i2] !== "string"){
const err10 = {instancePath:instancePath+"/excludes/" + i2,schemaPath:"#/properties/excludes/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
}
}
if(data.note !== undefined){
if(!(validate54(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
}
else {
const err11 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
validate60.errors = vErrors;
return errors === 0;
}
validate60.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const family_identify = validate63;
const schema24 = {"description":"What only the bench can tell.","type":"object","properties":{"name":{"description":"What is found out, as the sheet prints it.","$ref":"common.schema.json#/$defs/prose"},"values":{"description":"What it can turn out to be.","type":"array","items":{"type":"string"},"minItems":2},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"figure":{"description":"A figure that shows how to tell.","type":"string","x-ref":"figure"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name","values"],"additionalProperties":false,"x-own":true};
const schema25 = {"description":"A condition on builds and outcomes.","type":["string","array","object"],"x-condition":true,"items":{"$ref":"common.schema.json#/$defs/condition"},"minItems":1,"minProperties":1,"properties":{"all":{"description":"All of these must hold.","$ref":"common.schema.json#/$defs/condition"},"any":{"description":"At least one of these must hold.","$ref":"common.schema.json#/$defs/condition"},"none":{"description":"None of these may hold.","$ref":"common.schema.json#/$defs/condition"}},"additionalProperties":false};
const wrapper0 = {validate: validate65};

function validate65(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate65.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((!data || typeof data != "object") && (typeof data !== "string")){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema25.type},message:"must be string,array,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Array.isArray(data)){
if(data.length < 1){
const err1 = {instancePath,schemaPath:"#/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data[i0], {instancePath:instancePath+"/" + i0,parentData:data,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(Object.keys(data).length < 1){
const err2 = {instancePath,schemaPath:"#/minProperties",keyword:"minProperties",params:{limit: 1},message:"must NOT have fewer than 1 properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(((key0 === "all") || (key0 === "any")) || (key0 === "none"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.all !== undefined){
if(!(wrapper0.validate(data.all, {instancePath:instancePath+"/all",parentData:data,parentDataProperty:"all",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
if(data.any !== undefined){
if(!(wrapper0.validate(data.any, {instancePath:instancePath+"/any",parentData:data,parentDataProperty:"any",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
if(data.none !== undefined){
if(!(wrapper0.validate(data.none, {instancePath:instancePath+"/none",parentData:data,parentDataProperty:"none",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
validate65.errors = vErrors;
return errors === 0;
}
validate65.evaluated = {"props":true,"items":true,"dynamicProps":false,"dynamicItems":false};


function validate63(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate63.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.values === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "values"},message:"must have required property '"+"values"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "name") || (key0 === "values")) || (key0 === "when")) || (key0 === "unless")) || (key0 === "figure")) || (key0 === "note"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate54(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.values !== undefined){
let data1 = data.values;
if(Array.isArray(data1)){
if(data1.length < 2){
const err3 = {instancePath:instancePath+"/values",schemaPath:"#/properties/values/minItems",keyword:"minItems",params:{limit: 2},message:"must NOT have fewer than 2 items"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err4 = {instancePath:instancePath+"/values/" + i0,schemaPath:"#/properties/values/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath:instancePath+"/values",schemaPath:"#/properties/values/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.when !== undefined){
if(!(validate65(data.when, {instancePath:instancePath+"/when",parentData:data,parentDataProperty:"when",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data.unless !== undefined){
if(!(validate65(data.unless, {instancePath:instancePath+"/unless",parentData:data,parentDataProperty:"unless",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data.figure !== undefined){
if(typeof data.figure !== "string"){
const err6 = {instancePath:instancePath+"/figure",schemaPath:"#/properties/figure/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.note !== undefined){
if(!(validate54(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate63.errors = vErrors;
return errors === 0;
}
validate63.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const family_part = validate69;
const schema26 = {"description":"A part of the unit.","type":"object","properties":{"name":{"description":"What the sheet calls the part, in lower case, without an article.","$ref":"common.schema.json#/$defs/prose"},"also":{"description":"Other names the trade uses for it.","type":["string","array"],"items":{"type":"string"}},"kind":{"description":"What sort of part it is.","type":"string","enum":["nut","bolt","screw","stud","washer","clamp","retaining-ring","seal-ring","o-ring","gasket","bearing","thrust-bearing","collar","spacer","wheel","shaft","housing","plate","shield","pin","plug","fitting","pipe","spring","actuator","lever","rod","vane","sensor","plate-label"]},"number":{"description":"The maker's part number, exactly as printed.","type":["string","object"],"x-by-build":true,"additionalProperties":{"type":"string"}},"quantity":{"description":"How many pieces of it the unit has.","type":["string","object"],"x-by-build":true,"x-count":true,"additionalProperties":{"type":"string","pattern":"^\\d+$"},"pattern":"^[1-9]\\d*$"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"instead-of":{"description":"Parts whose place it takes on the builds that have it.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"sits-on":{"description":"The part it is carried by: one, a list, or a map from part to the number of pieces there.","type":["string","array","object"],"x-ref":"part","x-counted":true,"items":{"type":"string"},"additionalProperties":{"type":"string","pattern":"^[1-9]\\d*$"}},"fastened-by":{"description":"Fasteners that hold it.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"frees-when":{"description":"Whether its fasteners must come off or only be loose before it can be removed; on a fastener: what it needs for the parts it holds.","type":"string","enum":["off","loose"]},"seals":{"description":"Parts whose joint it seals; opening that joint spends it.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"mates-with":{"description":"The part whose thread it is screwed to.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"thread":{"description":"Thread designation as ISO 965-1 or ASME B1.1 writes it, for example M5×0.8 or 1/4-28 UNF-2A.","type":["string","object"],"x-by-build":true,"additionalProperties":{"type":"string"}},"hand":{"description":"Which way the thread runs. Left: turn counter-clockwise to tighten.","type":["string","object"],"pattern":"^(left|right)$","x-choices":["left","right"],"x-by-build":true,"additionalProperties":{"type":"string","enum":["left","right"]}},"property-class":{"description":"Property class or grade as marked on the fastener, for example 8.8, 10, A2-70.","type":["string","object"],"x-by-build":true,"additionalProperties":{"type":"string"}},"across-flats":{"description":"Width across flats of its hexagon or of its socket drive.","type":["string","object"],"x-quantity":"length","x-by-build":true,"additionalProperties":{"type":"string"}},"drive":{"description":"How a tool takes hold of it.","type":"string","enum":["hexagon","socket-hexagon","hexalobular","bi-hexagon","square","slot","cross","pin-holes","knurl"]},"drive-size":{"description":"Size of a drive that has no width across flats, for example T30.","type":"string"},"bearing-diameter":{"description":"Outside diameter of the face under its head.","type":["string","object"],"x-quantity":"length","x-by-build":true,"additionalProperties":{"type":"string"}},"friction":{"description":"Friction coefficient of thread and face where the maker states one, in per cent.","type":"string","x-quantity":"ratio"},"torque":{"description":"Tightening torque, with unit and tolerance, as the maker states it.","type":["string","object"],"x-quantity":"torque","x-by-build":true,"additionalProperties":{"type":"string"}},"angle":{"description":"Angle turned after the torque, as the maker states it.","type":["string","object"],"x-quantity":"angle","x-by-build":true,"additionalProperties":{"type":"string"}},"prevailing-torque":{"description":"Torque needed to turn a locking fastener before it seats.","type":["string","object"],"x-quantity":"torque","x-by-build":true,"additionalProperties":{"type":"string"}},"in-order":{"description":"Order in which the pieces are tightened.","type":["string","array"],"items":{"type":"string"}},"hold":{"description":"Where it must be counter-held while it is turned.","$ref":"common.schema.json#/$defs/prose"},"locked-by":{"description":"What locks its adjustment.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"behind":{"description":"Parts that must be off before it can be reached.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"before-fitting":{"description":"What must be done to it, since it came off or out of its bag, before it is fitted.","type":["string","array"],"pattern":"^(clean|inspect|lubricate|threadlock|heat|cool|mark|measure)$","items":{"type":"string","enum":["clean","inspect","lubricate","threadlock","heat","cool","mark","measure"]},"x-choices":["clean","inspect","lubricate","threadlock","heat","cool","mark","measure"]},"locate":{"description":"What it locates on: pin, notch, groove.","$ref":"common.schema.json#/$defs/prose"},"orient":{"description":"How it faces when it is fitted.","$ref":"common.schema.json#/$defs/prose"},"sizes":{"description":"Range of the sizes it comes in.","type":"string","x-quantity":"length"},"size-step":{"description":"Step between its sizes.","type":"string","x-quantity":"length"},"renew":{"description":"Whether it is always renewed, renewed on condition, or never (the default).","type":"string","enum":["always","on-condition","never"]},"comes-with":{"description":"Parts that are renewed or refitted only together with it, as a set.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"serial":{"description":"Its serial number is recorded.","type":"string","pattern":"^(true|false)$"},"never-clean-with":{"description":"Ways of cleaning that would spoil it.","type":["string","array"],"pattern":"^(wash|ultrasonic|brush|wire-brush|wipe|blast|caustic|solvent|steam|compressed-air)$","items":{"type":"string","enum":["wash","ultrasonic","brush","wire-brush","wipe","blast","caustic","solvent","steam","compressed-air"]},"x-choices":["wash","ultrasonic","brush","wire-brush","wipe","blast","caustic","solvent","steam","compressed-air"]},"temporary":{"description":"A blank, plug or pin that must not stay in the finished unit.","type":"string","pattern":"^(true|false)$"},"maker-mark":{"description":"It carries a mark of its maker to be aligned by.","type":"string","pattern":"^(true|false)$"},"fit":{"description":"The fit on the part it sits on.","type":"object","properties":{"with":{"description":"The other part.","type":"string","x-ref":"part"},"bore":{"description":"The bore's dimension.","type":"string","x-ref":"dimension"},"shaft":{"description":"The shaft's dimension.","type":"string","x-ref":"dimension"},"class":{"description":"The fit as ISO 286-1 writes it, with the nominal size, for example 25 H7/p6.","type":"string"},"interference":{"description":"Interference on the diameter, as the drawing states it: how much larger the shaft is than the bore.","type":"string","x-quantity":"length"},"clearance":{"description":"Clearance wanted while it is slid on hot.","type":"string","x-quantity":"length"}},"required":[],"additionalProperties":false},"material":{"description":"Material, as its drawing states it.","type":"string"},"expansion":{"description":"Coefficient of linear expansion, in 10⁻⁶ per kelvin.","type":"string"},"max-temperature":{"description":"Highest temperature it stands while it is fitted.","type":["string","object"],"x-quantity":"temperature","x-by-build":true,"additionalProperties":{"type":"string"}},"mass":{"description":"Its mass.","type":["string","object"],"x-quantity":"mass","x-by-build":true,"additionalProperties":{"type":"string"}},"section":{"description":"Cross-section of an O-ring.","type":"string","x-quantity":"length"},"inside-diameter":{"description":"Inside diameter of an O-ring.","type":"string","x-quantity":"length"},"groove":{"description":"The groove of an O-ring.","type":"object","properties":{"depth":{"description":"Depth from the groove's floor to the mating face.","type":"string","x-quantity":"length"},"width":{"description":"Width of the groove.","type":"string","x-quantity":"length"},"diameter":{"description":"Diameter of the groove's floor.","type":"string","x-quantity":"length"},"motion":{"description":"Whether the joint moves.","type":"string","enum":["static","dynamic"]}},"required":[],"additionalProperties":false},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true};
const pattern4 = new RegExp("^[1-9]\\d*$", "u");
const pattern5 = new RegExp("^\\d+$", "u");
const pattern7 = new RegExp("^(left|right)$", "u");
const pattern8 = new RegExp("^(clean|inspect|lubricate|threadlock|heat|cool|mark|measure)$", "u");
const pattern9 = new RegExp("^(true|false)$", "u");
const pattern10 = new RegExp("^(wash|ultrasonic|brush|wire-brush|wipe|blast|caustic|solvent|steam|compressed-air)$", "u");

function validate69(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate69.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema26.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate54(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.also !== undefined){
let data1 = data.also;
if((typeof data1 !== "string") && (!(Array.isArray(data1)))){
const err2 = {instancePath:instancePath+"/also",schemaPath:"#/properties/also/type",keyword:"type",params:{type: schema26.properties.also.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(Array.isArray(data1)){
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err3 = {instancePath:instancePath+"/also/" + i0,schemaPath:"#/properties/also/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.kind !== undefined){
let data3 = data.kind;
if(typeof data3 !== "string"){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(!((((((((((((((((((((((((((((((data3 === "nut") || (data3 === "bolt")) || (data3 === "screw")) || (data3 === "stud")) || (data3 === "washer")) || (data3 === "clamp")) || (data3 === "retaining-ring")) || (data3 === "seal-ring")) || (data3 === "o-ring")) || (data3 === "gasket")) || (data3 === "bearing")) || (data3 === "thrust-bearing")) || (data3 === "collar")) || (data3 === "spacer")) || (data3 === "wheel")) || (data3 === "shaft")) || (data3 === "housing")) || (data3 === "plate")) || (data3 === "shield")) || (data3 === "pin")) || (data3 === "plug")) || (data3 === "fitting")) || (data3 === "pipe")) || (data3 === "spring")) || (data3 === "actuator")) || (data3 === "lever")) || (data3 === "rod")) || (data3 === "vane")) || (data3 === "sensor")) || (data3 === "plate-label"))){
const err5 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/enum",keyword:"enum",params:{allowedValues: schema26.properties.kind.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.number !== undefined){
let data4 = data.number;
if((typeof data4 !== "string") && (!(data4 && typeof data4 == "object" && !Array.isArray(data4)))){
const err6 = {instancePath:instancePath+"/number",schemaPath:"#/properties/number/type",keyword:"type",params:{type: schema26.properties.number.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
if(data4 && typeof data4 == "object" && !Array.isArray(data4)){
for(const key1 in data4){
if(typeof data4[key1] !== "string"){
const err7 = {instancePath:instancePath+"/number/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/number/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
}
}
if(data.quantity !== undefined){
let data6 = data.quantity;
if((typeof data6 !== "string") && (!(data6 && typeof data6 == "object" && !Array.isArray(data6)))){
const err8 = {instancePath:instancePath+"/quantity",schemaPath:"#/properties/quantity/type",keyword:"type",params:{type: schema26.properties.quantity.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
if(typeof data6 === "string"){
if(!pattern4.test(data6)){
const err9 = {instancePath:instancePath+"/quantity",schemaPath:"#/properties/quantity/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data6 && typeof data6 == "object" && !Array.isArray(data6)){
for(const key2 in data6){
let data7 = data6[key2];
if(typeof data7 === "string"){
if(!pattern5.test(data7)){
const err10 = {instancePath:instancePath+"/quantity/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/quantity/additionalProperties/pattern",keyword:"pattern",params:{pattern: "^\\d+$"},message:"must match pattern \""+"^\\d+$"+"\""};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
else {
const err11 = {instancePath:instancePath+"/quantity/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/quantity/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
}
}
if(data.when !== undefined){
if(!(validate65(data.when, {instancePath:instancePath+"/when",parentData:data,parentDataProperty:"when",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data.unless !== undefined){
if(!(validate65(data.unless, {instancePath:instancePath+"/unless",parentData:data,parentDataProperty:"unless",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data["instead-of"] !== undefined){
let data10 = data["instead-of"];
if((typeof data10 !== "string") && (!(Array.isArray(data10)))){
const err12 = {instancePath:instancePath+"/instead-of",schemaPath:"#/properties/instead-of/type",keyword:"type",params:{type: schema26.properties["instead-of"].type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
if(Array.isArray(data10)){
if(data10.length < 1){
const err13 = {instancePath:instancePath+"/instead-of",schemaPath:"#/properties/instead-of/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(typeof data10[i1] !== "string"){
const err14 = {instancePath:instancePath+"/instead-of/" + i1,schemaPath:"#/properties/instead-of/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
}
}
if(data["sits-on"] !== undefined){
let data12 = data["sits-on"];
if((!data12 || typeof data12 != "object") && (typeof data12 !== "string")){
const err15 = {instancePath:instancePath+"/sits-on",schemaPath:"#/properties/sits-on/type",keyword:"type",params:{type: schema26.properties["sits-on"].type},message:"must be string,array,object"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
if(Array.isArray(data12)){
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(typeof data12[i2] !== "string"){
const err16 = {instancePath:instancePath+"/sits-on/" + i2,schemaPath:"#/properties/sits-on/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
}
if(data12 && typeof data12 == "object" && !Array.isArray(data12)){
for(const key3 in data12){
let data14 = data12[key3];
if(typeof data14 === "string"){
if(!pattern4.test(data14)){
const err17 = {instancePath:instancePath+"/sits-on/" + key3.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/sits-on/additionalProperties/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
else {
const err18 = {instancePath:instancePath+"/sits-on/" + key3.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/sits-on/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
}
}
if(data["fastened-by"] !== undefined){
let data15 = data["fastened-by"];
if((typeof data15 !== "string") && (!(Array.isArray(data15)))){
const err19 = {instancePath:instancePath+"/fastened-by",schemaPath:"#/properties/fastened-by/type",keyword:"type",params:{type: schema26.properties["fastened-by"].type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
if(Array.isArray(data15)){
if(data15.length < 1){
const err20 = {instancePath:instancePath+"/fastened-by",schemaPath:"#/properties/fastened-by/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len3 = data15.length;
for(let i3=0; i3<len3; i3++){
if(typeof data15[i3] !== "string"){
const err21 = {instancePath:instancePath+"/fastened-by/" + i3,schemaPath:"#/properties/fastened-by/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
}
}
if(data["frees-when"] !== undefined){
let data17 = data["frees-when"];
if(typeof data17 !== "string"){
const err22 = {instancePath:instancePath+"/frees-when",schemaPath:"#/properties/frees-when/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
if(!((data17 === "off") || (data17 === "loose"))){
const err23 = {instancePath:instancePath+"/frees-when",schemaPath:"#/properties/frees-when/enum",keyword:"enum",params:{allowedValues: schema26.properties["frees-when"].enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data.seals !== undefined){
let data18 = data.seals;
if((typeof data18 !== "string") && (!(Array.isArray(data18)))){
const err24 = {instancePath:instancePath+"/seals",schemaPath:"#/properties/seals/type",keyword:"type",params:{type: schema26.properties.seals.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
if(Array.isArray(data18)){
if(data18.length < 1){
const err25 = {instancePath:instancePath+"/seals",schemaPath:"#/properties/seals/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
const len4 = data18.length;
for(let i4=0; i4<len4; i4++){
if(typeof data18[i4] !== "string"){
const err26 = {instancePath:instancePath+"/seals/" + i4,schemaPath:"#/properties/seals/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
}
}
if(data["mates-with"] !== undefined){
let data20 = data["mates-with"];
if((typeof data20 !== "string") && (!(Array.isArray(data20)))){
const err27 = {instancePath:instancePath+"/mates-with",schemaPath:"#/properties/mates-with/type",keyword:"type",params:{type: schema26.properties["mates-with"].type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
if(Array.isArray(data20)){
if(data20.length < 1){
const err28 = {instancePath:instancePath+"/mates-with",schemaPath:"#/properties/mates-with/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
const len5 = data20.length;
for(let i5=0; i5<len5; i5++){
if(typeof data20[i5] !== "string"){
const err29 = {instancePath:instancePath+"/mates-with/" + i5,schemaPath:"#/properties/mates-with/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
}
}
if(data.thread !== undefined){
let data22 = data.thread;
if((typeof data22 !== "string") && (!(data22 && typeof data22 == "object" && !Array.isArray(data22)))){
const err30 = {instancePath:instancePath+"/thread",schemaPath:"#/properties/thread/type",keyword:"type",params:{type: schema26.properties.thread.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
if(data22 && typeof data22 == "object" && !Array.isArray(data22)){
for(const key4 in data22){
if(typeof data22[key4] !== "string"){
const err31 = {instancePath:instancePath+"/thread/" + key4.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/thread/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
}
}
if(data.hand !== undefined){
let data24 = data.hand;
if((typeof data24 !== "string") && (!(data24 && typeof data24 == "object" && !Array.isArray(data24)))){
const err32 = {instancePath:instancePath+"/hand",schemaPath:"#/properties/hand/type",keyword:"type",params:{type: schema26.properties.hand.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
if(typeof data24 === "string"){
if(!pattern7.test(data24)){
const err33 = {instancePath:instancePath+"/hand",schemaPath:"#/properties/hand/pattern",keyword:"pattern",params:{pattern: "^(left|right)$"},message:"must match pattern \""+"^(left|right)$"+"\""};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
if(data24 && typeof data24 == "object" && !Array.isArray(data24)){
for(const key5 in data24){
let data25 = data24[key5];
if(typeof data25 !== "string"){
const err34 = {instancePath:instancePath+"/hand/" + key5.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/hand/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
if(!((data25 === "left") || (data25 === "right"))){
const err35 = {instancePath:instancePath+"/hand/" + key5.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/hand/additionalProperties/enum",keyword:"enum",params:{allowedValues: schema26.properties.hand.additionalProperties.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
}
}
if(data["property-class"] !== undefined){
let data26 = data["property-class"];
if((typeof data26 !== "string") && (!(data26 && typeof data26 == "object" && !Array.isArray(data26)))){
const err36 = {instancePath:instancePath+"/property-class",schemaPath:"#/properties/property-class/type",keyword:"type",params:{type: schema26.properties["property-class"].type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
if(data26 && typeof data26 == "object" && !Array.isArray(data26)){
for(const key6 in data26){
if(typeof data26[key6] !== "string"){
const err37 = {instancePath:instancePath+"/property-class/" + key6.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/property-class/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
}
}
if(data["across-flats"] !== undefined){
let data28 = data["across-flats"];
if((typeof data28 !== "string") && (!(data28 && typeof data28 == "object" && !Array.isArray(data28)))){
const err38 = {instancePath:instancePath+"/across-flats",schemaPath:"#/properties/across-flats/type",keyword:"type",params:{type: schema26.properties["across-flats"].type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
if(data28 && typeof data28 == "object" && !Array.isArray(data28)){
for(const key7 in data28){
if(typeof data28[key7] !== "string"){
const err39 = {instancePath:instancePath+"/across-flats/" + key7.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/across-flats/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
}
}
if(data.drive !== undefined){
let data30 = data.drive;
if(typeof data30 !== "string"){
const err40 = {instancePath:instancePath+"/drive",schemaPath:"#/properties/drive/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
if(!(((((((((data30 === "hexagon") || (data30 === "socket-hexagon")) || (data30 === "hexalobular")) || (data30 === "bi-hexagon")) || (data30 === "square")) || (data30 === "slot")) || (data30 === "cross")) || (data30 === "pin-holes")) || (data30 === "knurl"))){
const err41 = {instancePath:instancePath+"/drive",schemaPath:"#/properties/drive/enum",keyword:"enum",params:{allowedValues: schema26.properties.drive.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
}
if(data["drive-size"] !== undefined){
if(typeof data["drive-size"] !== "string"){
const err42 = {instancePath:instancePath+"/drive-size",schemaPath:"#/properties/drive-size/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err42];
}
else {
vErrors.push(err42);
}
errors++;
}
}
if(data["bearing-diameter"] !== undefined){
let data32 = data["bearing-diameter"];
if((typeof data32 !== "string") && (!(data32 && typeof data32 == "object" && !Array.isArray(data32)))){
const err43 = {instancePath:instancePath+"/bearing-diameter",schemaPath:"#/properties/bearing-diameter/type",keyword:"type",params:{type: schema26.properties["bearing-diameter"].type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err43];
}
else {
vErrors.push(err43);
}
errors++;
}
if(data32 && typeof data32 == "object" && !Array.isArray(data32)){
for(const key8 in data32){
if(typeof data32[key8] !== "string"){
const err44 = {instancePath:instancePath+"/bearing-diameter/" + key8.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/bearing-diameter/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err44];
}
else {
vErrors.push(err44);
}
errors++;
}
}
}
}
if(data.friction !== undefined){
if(typeof data.friction !== "string"){
const err45 = {instancePath:instancePath+"/friction",schemaPath:"#/properties/friction/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err45];
}
else {
vErrors.push(err45);
}
errors++;
}
}
if(data.torque !== undefined){
let data35 = data.torque;
if((typeof data35 !== "string") && (!(data35 && typeof data35 == "object" && !Array.isArray(data35)))){
const err46 = {instancePath:instancePath+"/torque",schemaPath:"#/properties/torque/type",keyword:"type",params:{type: schema26.properties.torque.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err46];
}
else {
vErrors.push(err46);
}
errors++;
}
if(data35 && typeof data35 == "object" && !Array.isArray(data35)){
for(const key9 in data35){
if(typeof data35[key9] !== "string"){
const err47 = {instancePath:instancePath+"/torque/" + key9.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/torque/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err47];
}
else {
vErrors.push(err47);
}
errors++;
}
}
}
}
if(data.angle !== undefined){
let data37 = data.angle;
if((typeof data37 !== "string") && (!(data37 && typeof data37 == "object" && !Array.isArray(data37)))){
const err48 = {instancePath:instancePath+"/angle",schemaPath:"#/properties/angle/type",keyword:"type",params:{type: schema26.properties.angle.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err48];
}
else {
vErrors.push(err48);
}
errors++;
}
if(data37 && typeof data37 == "object" && !Array.isArray(data37)){
for(const key10 in data37){
if(typeof data37[key10] !== "string"){
const err49 = {instancePath:instancePath+"/angle/" + key10.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/angle/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err49];
}
else {
vErrors.push(err49);
}
errors++;
}
}
}
}
if(data["prevailing-torque"] !== undefined){
let data39 = data["prevailing-torque"];
if((typeof data39 !== "string") && (!(data39 && typeof data39 == "object" && !Array.isArray(data39)))){
const err50 = {instancePath:instancePath+"/prevailing-torque",schemaPath:"#/properties/prevailing-torque/type",keyword:"type",params:{type: schema26.properties["prevailing-torque"].type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err50];
}
else {
vErrors.push(err50);
}
errors++;
}
if(data39 && typeof data39 == "object" && !Array.isArray(data39)){
for(const key11 in data39){
if(typeof data39[key11] !== "string"){
const err51 = {instancePath:instancePath+"/prevailing-torque/" + key11.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/prevailing-torque/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err51];
}
else {
vErrors.push(err51);
}
errors++;
}
}
}
}
if(data["in-order"] !== undefined){
let data41 = data["in-order"];
if((typeof data41 !== "string") && (!(Array.isArray(data41)))){
const err52 = {instancePath:instancePath+"/in-order",schemaPath:"#/properties/in-order/type",keyword:"type",params:{type: schema26.properties["in-order"].type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err52];
}
else {
vErrors.push(err52);
}
errors++;
}
if(Array.isArray(data41)){
const len6 = data41.length;
for(let i6=0; i6<len6; i6++){
if(typeof data41[i6] !== "string"){
const err53 = {instancePath:instancePath+"/in-order/" + i6,schemaPath:"#/properties/in-order/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err53];
}
else {
vErrors.push(err53);
}
errors++;
}
}
}
}
if(data.hold !== undefined){
if(!(validate54(data.hold, {instancePath:instancePath+"/hold",parentData:data,parentDataProperty:"hold",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data["locked-by"] !== undefined){
let data44 = data["locked-by"];
if((typeof data44 !== "string") && (!(Array.isArray(data44)))){
const err54 = {instancePath:instancePath+"/locked-by",schemaPath:"#/properties/locked-by/type",keyword:"type",params:{type: schema26.properties["locked-by"].type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err54];
}
else {
vErrors.push(err54);
}
errors++;
}
if(Array.isArray(data44)){
if(data44.length < 1){
const err55 = {instancePath:instancePath+"/locked-by",schemaPath:"#/properties/locked-by/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err55];
}
else {
vErrors.push(err55);
}
errors++;
}
const len7 = data44.length;
for(let i7=0; i7<len7; i7++){
if(typeof data44[i7] !== "string"){
const err56 = {instancePath:instancePath+"/locked-by/" + i7,schemaPath:"#/properties/locked-by/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err56];
}
else {
vErrors.push(err56);
}
errors++;
}
}
}
}
if(data.behind !== undefined){
let data46 = data.behind;
if((typeof data46 !== "string") && (!(Array.isArray(data46)))){
const err57 = {instancePath:instancePath+"/behind",schemaPath:"#/properties/behind/type",keyword:"type",params:{type: schema26.properties.behind.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err57];
}
else {
vErrors.push(err57);
}
errors++;
}
if(Array.isArray(data46)){
if(data46.length < 1){
const err58 = {instancePath:instancePath+"/behind",schemaPath:"#/properties/behind/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err58];
}
else {
vErrors.push(err58);
}
errors++;
}
const len8 = data46.length;
for(let i8=0; i8<len8; i8++){
if(typeof data46[i8] !== "string"){
const err59 = {instancePath:instancePath+"/behind/" + i8,schemaPath:"#/properties/behind/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err59];
}
else {
vErrors.push(err59);
}
errors++;
}
}
}
}
if(data["before-fitting"] !== undefined){
let data48 = data["before-fitting"];
if((typeof data48 !== "string") && (!(Array.isArray(data48)))){
const err60 = {instancePath:instancePath+"/before-fitting",schemaPath:"#/properties/before-fitting/type",keyword:"type",params:{type: schema26.properties["before-fitting"].type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err60];
}
else {
vErrors.push(err60);
}
errors++;
}
if(typeof data48 === "string"){
if(!pattern8.test(data48)){
const err61 = {instancePath:instancePath+"/before-fitting",schemaPath:"#/properties/before-fitting/pattern",keyword:"pattern",params:{pattern: "^(clean|inspect|lubricate|threadlock|heat|cool|mark|measure)$"},message:"must match pattern \""+"^(clean|inspect|lubricate|threadlock|heat|cool|mark|measure)$"+"\""};
if(vErrors === null){
vErrors = [err61];
}
else {
vErrors.push(err61);
}
errors++;
}
}
if(Array.isArray(data48)){
const len9 = data48.length;
for(let i9=0; i9<len9; i9++){
let data49 = data48[i9];
if(typeof data49 !== "string"){
const err62 = {instancePath:instancePath+"/before-fitting/" + i9,schemaPath:"#/properties/before-fitting/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err62];
}
else {
vErrors.push(err62);
}
errors++;
}
if(!((((((((data49 === "clean") || (data49 === "inspect")) || (data49 === "lubricate")) || (data49 === "threadlock")) || (data49 === "heat")) || (data49 === "cool")) || (data49 === "mark")) || (data49 === "measure"))){
const err63 = {instancePath:instancePath+"/before-fitting/" + i9,schemaPath:"#/properties/before-fitting/items/enum",keyword:"enum",params:{allowedValues: schema26.properties["before-fitting"].items.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err63];
}
else {
vErrors.push(err63);
}
errors++;
}
}
}
}
if(data.locate !== undefined){
if(!(validate54(data.locate, {instancePath:instancePath+"/locate",parentData:data,parentDataProperty:"locate",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.orient !== undefined){
if(!(validate54(data.orient, {instancePath:instancePath+"/orient",parentData:data,parentDataProperty:"orient",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.sizes !== undefined){
if(typeof data.sizes !== "string"){
const err64 = {instancePath:instancePath+"/sizes",schemaPath:"#/properties/sizes/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err64];
}
else {
vErrors.push(err64);
}
errors++;
}
}
if(data["size-step"] !== undefined){
if(typeof data["size-step"] !== "string"){
const err65 = {instancePath:instancePath+"/size-step",schemaPath:"#/properties/size-step/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err65];
}
else {
vErrors.push(err65);
}
errors++;
}
}
if(data.renew !== undefined){
let data54 = data.renew;
if(typeof data54 !== "string"){
const err66 = {instancePath:instancePath+"/renew",schemaPath:"#/properties/renew/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err66];
}
else {
vErrors.push(err66);
}
errors++;
}
if(!(((data54 === "always") || (data54 === "on-condition")) || (data54 === "never"))){
const err67 = {instancePath:instancePath+"/renew",schemaPath:"#/properties/renew/enum",keyword:"enum",params:{allowedValues: schema26.properties.renew.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err67];
}
else {
vErrors.push(err67);
}
errors++;
}
}
if(data["comes-with"] !== undefined){
let data55 = data["comes-with"];
if((typeof data55 !== "string") && (!(Array.isArray(data55)))){
const err68 = {instancePath:instancePath+"/comes-with",schemaPath:"#/properties/comes-with/type",keyword:"type",params:{type: schema26.properties["comes-with"].type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err68];
}
else {
vErrors.push(err68);
}
errors++;
}
if(Array.isArray(data55)){
if(data55.length < 1){
const err69 = {instancePath:instancePath+"/comes-with",schemaPath:"#/properties/comes-with/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err69];
}
else {
vErrors.push(err69);
}
errors++;
}
const len10 = data55.length;
for(let i10=0; i10<len10; i10++){
if(typeof data55[i10] !== "string"){
const err70 = {instancePath:instancePath+"/comes-with/" + i10,schemaPath:"#/properties/comes-with/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err70];
}
else {
vErrors.push(err70);
}
errors++;
}
}
}
}
if(data.serial !== undefined){
let data57 = data.serial;
if(typeof data57 === "string"){
if(!pattern9.test(data57)){
const err71 = {instancePath:instancePath+"/serial",schemaPath:"#/properties/serial/pattern",keyword:"pattern",params:{pattern: "^(true|false)$"},message:"must match pattern \""+"^(true|false)$"+"\""};
if(vErrors === null){
vErrors = [err71];
}
else {
vErrors.push(err71);
}
errors++;
}
}
else {
const err72 = {instancePath:instancePath+"/serial",schemaPath:"#/properties/serial/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err72];
}
else {
vErrors.push(err72);
}
errors++;
}
}
if(data["never-clean-with"] !== undefined){
let data58 = data["never-clean-with"];
if((typeof data58 !== "string") && (!(Array.isArray(data58)))){
const err73 = {instancePath:instancePath+"/never-clean-with",schemaPath:"#/properties/never-clean-with/type",keyword:"type",params:{type: schema26.properties["never-clean-with"].type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err73];
}
else {
vErrors.push(err73);
}
errors++;
}
if(typeof data58 === "string"){
if(!pattern10.test(data58)){
const err74 = {instancePath:instancePath+"/never-clean-with",schemaPath:"#/properties/never-clean-with/pattern",keyword:"pattern",params:{pattern: "^(wash|ultrasonic|brush|wire-brush|wipe|blast|caustic|solvent|steam|compressed-air)$"},message:"must match pattern \""+"^(wash|ultrasonic|brush|wire-brush|wipe|blast|caustic|solvent|steam|compressed-air)$"+"\""};
if(vErrors === null){
vErrors = [err74];
}
else {
vErrors.push(err74);
}
errors++;
}
}
if(Array.isArray(data58)){
const len11 = data58.length;
for(let i11=0; i11<len11; i11++){
let data59 = data58[i11];
if(typeof data59 !== "string"){
const err75 = {instancePath:instancePath+"/never-clean-with/" + i11,schemaPath:"#/properties/never-clean-with/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err75];
}
else {
vErrors.push(err75);
}
errors++;
}
if(!((((((((((data59 === "wash") || (data59 === "ultrasonic")) || (data59 === "brush")) || (data59 === "wire-brush")) || (data59 === "wipe")) || (data59 === "blast")) || (data59 === "caustic")) || (data59 === "solvent")) || (data59 === "steam")) || (data59 === "compressed-air"))){
const err76 = {instancePath:instancePath+"/never-clean-with/" + i11,schemaPath:"#/properties/never-clean-with/items/enum",keyword:"enum",params:{allowedValues: schema26.properties["never-clean-with"].items.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err76];
}
else {
vErrors.push(err76);
}
errors++;
}
}
}
}
if(data.temporary !== undefined){
let data60 = data.temporary;
if(typeof data60 === "string"){
if(!pattern9.test(data60)){
const err77 = {instancePath:instancePath+"/temporary",schemaPath:"#/properties/temporary/pattern",keyword:"pattern",params:{pattern: "^(true|false)$"},message:"must match pattern \""+"^(true|false)$"+"\""};
if(vErrors === null){
vErrors = [err77];
}
else {
vErrors.push(err77);
}
errors++;
}
}
else {
const err78 = {instancePath:instancePath+"/temporary",schemaPath:"#/properties/temporary/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err78];
}
else {
vErrors.push(err78);
}
errors++;
}
}
if(data["maker-mark"] !== undefined){
let data61 = data["maker-mark"];
if(typeof data61 === "string"){
if(!pattern9.test(data61)){
const err79 = {instancePath:instancePath+"/maker-mark",schemaPath:"#/properties/maker-mark/pattern",keyword:"pattern",params:{pattern: "^(true|false)$"},message:"must match pattern \""+"^(true|false)$"+"\""};
if(vErrors === null){
vErrors = [err79];
}
else {
vErrors.push(err79);
}
errors++;
}
}
else {
const err80 = {instancePath:instancePath+"/maker-mark",schemaPath:"#/properties/maker-mark/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err80];
}
else {
vErrors.push(err80);
}
errors++;
}
}
if(data.fit !== undefined){
let data62 = data.fit;
if(data62 && typeof data62 == "object" && !Array.isArray(data62)){
for(const key12 in data62){
if(!((((((key12 === "with") || (key12 === "bore")) || (key12 === "shaft")) || (key12 === "class")) || (key12 === "interference")) || (key12 === "clearance"))){
const err81 = {instancePath:instancePath+"/fit",schemaPath:"#/properties/fit/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key12},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err81];
}
else {
vErrors.push(err81);
}
errors++;
}
}
if(data62.with !== undefined){
if(typeof data62.with !== "string"){
const err82 = {instancePath:instancePath+"/fit/with",schemaPath:"#/properties/fit/properties/with/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err82];
}
else {
vErrors.push(err82);
}
errors++;
}
}
if(data62.bore !== undefined){
if(typeof data62.bore !== "string"){
const err83 = {instancePath:instancePath+"/fit/bore",schemaPath:"#/properties/fit/properties/bore/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err83];
}
else {
vErrors.push(err83);
}
errors++;
}
}
if(data62.shaft !== undefined){
if(typeof data62.shaft !== "string"){
const err84 = {instancePath:instancePath+"/fit/shaft",schemaPath:"#/properties/fit/properties/shaft/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err84];
}
else {
vErrors.push(err84);
}
errors++;
}
}
if(data62.class !== undefined){
if(typeof data62.class !== "string"){
const err85 = {instancePath:instancePath+"/fit/class",schemaPath:"#/properties/fit/properties/class/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err85];
}
else {
vErrors.push(err85);
}
errors++;
}
}
if(data62.interference !== undefined){
if(typeof data62.interference !== "string"){
const err86 = {instancePath:instancePath+"/fit/interference",schemaPath:"#/properties/fit/properties/interference/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err86];
}
else {
vErrors.push(err86);
}
errors++;
}
}
if(data62.clearance !== undefined){
if(typeof data62.clearance !== "string"){
const err87 = {instancePath:instancePath+"/fit/clearance",schemaPath:"#/properties/fit/properties/clearance/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err87];
}
else {
vErrors.push(err87);
}
errors++;
}
}
}
else {
const err88 = {instancePath:instancePath+"/fit",schemaPath:"#/properties/fit/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err88];
}
else {
vErrors.push(err88);
}
errors++;
}
}
if(data.material !== undefined){
if(typeof data.material !== "string"){
const err89 = {instancePath:instancePath+"/material",schemaPath:"#/properties/material/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err89];
}
else {
vErrors.push(err89);
}
errors++;
}
}
if(data.expansion !== undefined){
if(typeof data.expansion !== "string"){
const err90 = {instancePath:instancePath+"/expansion",schemaPath:"#/properties/expansion/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err90];
}
else {
vErrors.push(err90);
}
errors++;
}
}
if(data["max-temperature"] !== undefined){
let data71 = data["max-temperature"];
if((typeof data71 !== "string") && (!(data71 && typeof data71 == "object" && !Array.isArray(data71)))){
const err91 = {instancePath:instancePath+"/max-temperature",schemaPath:"#/properties/max-temperature/type",keyword:"type",params:{type: schema26.properties["max-temperature"].type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err91];
}
else {
vErrors.push(err91);
}
errors++;
}
if(data71 && typeof data71 == "object" && !Array.isArray(data71)){
for(const key13 in data71){
if(typeof data71[key13] !== "string"){
const err92 = {instancePath:instancePath+"/max-temperature/" + key13.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/max-temperature/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err92];
}
else {
vErrors.push(err92);
}
errors++;
}
}
}
}
if(data.mass !== undefined){
let data73 = data.mass;
if((typeof data73 !== "string") && (!(data73 && typeof data73 == "object" && !Array.isArray(data73)))){
const err93 = {instancePath:instancePath+"/mass",schemaPath:"#/properties/mass/type",keyword:"type",params:{type: schema26.properties.mass.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err93];
}
else {
vErrors.push(err93);
}
errors++;
}
if(data73 && typeof data73 == "object" && !Array.isArray(data73)){
for(const key14 in data73){
if(typeof data73[key14] !== "string"){
const err94 = {instancePath:instancePath+"/mass/" + key14.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/mass/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err94];
}
else {
vErrors.push(err94);
}
errors++;
}
}
}
}
if(data.section !== undefined){
if(typeof data.section !== "string"){
const err95 = {instancePath:instancePath+"/section",schemaPath:"#/properties/section/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err95];
}
else {
vErrors.push(err95);
}
errors++;
}
}
if(data["inside-diameter"] !== undefined){
if(typeof data["inside-diameter"] !== "string"){
const err96 = {instancePath:instancePath+"/inside-diameter",schemaPath:"#/properties/inside-diameter/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err96];
}
else {
vErrors.push(err96);
}
errors++;
}
}
if(data.groove !== undefined){
let data77 = data.groove;
if(data77 && typeof data77 == "object" && !Array.isArray(data77)){
for(const key15 in data77){
if(!((((key15 === "depth") || (key15 === "width")) || (key15 === "diameter")) || (key15 === "motion"))){
const err97 = {instancePath:instancePath+"/groove",schemaPath:"#/properties/groove/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key15},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err97];
}
else {
vErrors.push(err97);
}
errors++;
}
}
if(data77.depth !== undefined){
if(typeof data77.depth !== "string"){
const err98 = {instancePath:instancePath+"/groove/depth",schemaPath:"#/properties/groove/properties/depth/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err98];
}
else {
vErrors.push(err98);
}
errors++;
}
}
if(data77.width !== undefined){
if(typeof data77.width !== "string"){
const err99 = {instancePath:instancePath+"/groove/width",schemaPath:"#/properties/groove/properties/width/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err99];
}
else {
vErrors.push(err99);
}
errors++;
}
}
if(data77.diameter !== undefined){
if(typeof data77.diameter !== "string"){
const err100 = {instancePath:instancePath+"/groove/diameter",schemaPath:"#/properties/groove/properties/diameter/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err100];
}
else {
vErrors.push(err100);
}
errors++;
}
}
if(data77.motion !== undefined){
let data81 = data77.motion;
if(typeof data81 !== "string"){
const err101 = {instancePath:instancePath+"/groove/motion",schemaPath:"#/properties/groove/properties/motion/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err101];
}
else {
vErrors.push(err101);
}
errors++;
}
if(!((data81 === "static") || (data81 === "dynamic"))){
const err102 = {instancePath:instancePath+"/groove/motion",schemaPath:"#/properties/groove/properties/motion/enum",keyword:"enum",params:{allowedValues: schema26.properties.groove.properties.motion.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err102];
}
else {
vErrors.push(err102);
}
errors++;
}
}
}
else {
const err103 = {instancePath:instancePath+"/groove",schemaPath:"#/properties/groove/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err103];
}
else {
vErrors.push(err103);
}
errors++;
}
}
if(data.note !== undefined){
if(!(validate54(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
}
else {
const err104 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err104];
}
else {
vErrors.push(err104);
}
errors++;
}
validate69.errors = vErrors;
return errors === 0;
}
validate69.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const family_assembly = validate77;
const schema27 = {"description":"A sub-assembly.","type":"object","properties":{"name":{"description":"Name of the sub-assembly.","$ref":"common.schema.json#/$defs/prose"},"parts":{"description":"The parts it holds.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name","parts"],"additionalProperties":false,"x-own":true};

function validate77(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate77.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.parts === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "parts"},message:"must have required property '"+"parts"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(((key0 === "name") || (key0 === "parts")) || (key0 === "note"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate54(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.parts !== undefined){
let data1 = data.parts;
if((typeof data1 !== "string") && (!(Array.isArray(data1)))){
const err3 = {instancePath:instancePath+"/parts",schemaPath:"#/properties/parts/type",keyword:"type",params:{type: schema27.properties.parts.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
if(Array.isArray(data1)){
if(data1.length < 1){
const err4 = {instancePath:instancePath+"/parts",schemaPath:"#/properties/parts/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err5 = {instancePath:instancePath+"/parts/" + i0,schemaPath:"#/properties/parts/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
}
if(data.note !== undefined){
if(!(validate54(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate77.errors = vErrors;
return errors === 0;
}
validate77.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const family_balance_group = validate80;
const schema28 = {"description":"Parts that are balanced together.","type":"object","properties":{"name":{"description":"Name of the group.","$ref":"common.schema.json#/$defs/prose"},"members":{"description":"Its parts.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"keep-position":{"description":"Re-used members go back in the position to each other that they were balanced in.","type":"string","pattern":"^(true|false)$"},"grade":{"description":"Balance grade as ISO 21940-11 writes it, for example G 6.3.","type":"string"},"mass":{"description":"Mass of the group.","type":"string","x-quantity":"mass"},"planes":{"description":"Number of correction planes.","type":"string","pattern":"^[1-9]\\d*$"},"permissible":{"description":"Permissible residual unbalance, as the maker states it.","type":"string","x-quantity":"unbalance"},"permissible-for":{"description":"Whether the permissible unbalance, and what a procedure accepts, is meant for the whole rotor (the default) or for each correction plane.","type":"string","enum":["rotor","plane"]},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["members"],"additionalProperties":false,"x-own":true};

function validate80(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate80.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.members === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "members"},message:"must have required property '"+"members"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema28.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate54(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.members !== undefined){
let data1 = data.members;
if((typeof data1 !== "string") && (!(Array.isArray(data1)))){
const err2 = {instancePath:instancePath+"/members",schemaPath:"#/properties/members/type",keyword:"type",params:{type: schema28.properties.members.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/members",schemaPath:"#/properties/members/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err4 = {instancePath:instancePath+"/members/" + i0,schemaPath:"#/properties/members/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
}
if(data["keep-position"] !== undefined){
let data3 = data["keep-position"];
if(typeof data3 === "string"){
if(!pattern9.test(data3)){
const err5 = {instancePath:instancePath+"/keep-position",schemaPath:"#/properties/keep-position/pattern",keyword:"pattern",params:{pattern: "^(true|false)$"},message:"must match pattern \""+"^(true|false)$"+"\""};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
else {
const err6 = {instancePath:instancePath+"/keep-position",schemaPath:"#/properties/keep-position/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.grade !== undefined){
if(typeof data.grade !== "string"){
const err7 = {instancePath:instancePath+"/grade",schemaPath:"#/properties/grade/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.mass !== undefined){
if(typeof data.mass !== "string"){
const err8 = {instancePath:instancePath+"/mass",schemaPath:"#/properties/mass/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.planes !== undefined){
let data6 = data.planes;
if(typeof data6 === "string"){
if(!pattern4.test(data6)){
const err9 = {instancePath:instancePath+"/planes",schemaPath:"#/properties/planes/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
else {
const err10 = {instancePath:instancePath+"/planes",schemaPath:"#/properties/planes/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.permissible !== undefined){
if(typeof data.permissible !== "string"){
const err11 = {instancePath:instancePath+"/permissible",schemaPath:"#/properties/permissible/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data["permissible-for"] !== undefined){
let data8 = data["permissible-for"];
if(typeof data8 !== "string"){
const err12 = {instancePath:instancePath+"/permissible-for",schemaPath:"#/properties/permissible-for/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
if(!((data8 === "rotor") || (data8 === "plane"))){
const err13 = {instancePath:instancePath+"/permissible-for",schemaPath:"#/properties/permissible-for/enum",keyword:"enum",params:{allowedValues: schema28.properties["permissible-for"].enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data.note !== undefined){
if(!(validate54(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
}
else {
const err14 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
validate80.errors = vErrors;
return errors === 0;
}
validate80.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const family_check = validate83;
const schema29 = {"description":"A check by id.","type":"object","properties":{"say":{"description":"What must be found true.","$ref":"common.schema.json#/$defs/prose"},"after":{"description":"Parts whose last touch the check must come after.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"accept":{"description":"What is acceptable where a value is read.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"figure":{"description":"A figure that shows it.","type":"string","x-ref":"figure"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["say"],"additionalProperties":false,"x-own":true};

function validate83(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate83.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.say === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "say"},message:"must have required property '"+"say"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "say") || (key0 === "after")) || (key0 === "accept")) || (key0 === "figure")) || (key0 === "when")) || (key0 === "unless")) || (key0 === "note"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.say !== undefined){
if(!(validate54(data.say, {instancePath:instancePath+"/say",parentData:data,parentDataProperty:"say",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.after !== undefined){
let data1 = data.after;
if((typeof data1 !== "string") && (!(Array.isArray(data1)))){
const err2 = {instancePath:instancePath+"/after",schemaPath:"#/properties/after/type",keyword:"type",params:{type: schema29.properties.after.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/after",schemaPath:"#/properties/after/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err4 = {instancePath:instancePath+"/after/" + i0,schemaPath:"#/properties/after/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
}
if(data.accept !== undefined){
let data3 = data.accept;
if((typeof data3 !== "string") && (!(data3 && typeof data3 == "object" && !Array.isArray(data3)))){
const err5 = {instancePath:instancePath+"/accept",schemaPath:"#/properties/accept/type",keyword:"type",params:{type: schema29.properties.accept.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
for(const key1 in data3){
if(typeof data3[key1] !== "string"){
const err6 = {instancePath:instancePath+"/accept/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/accept/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
}
if(data.figure !== undefined){
if(typeof data.figure !== "string"){
const err7 = {instancePath:instancePath+"/figure",schemaPath:"#/properties/figure/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.when !== undefined){
if(!(validate65(data.when, {instancePath:instancePath+"/when",parentData:data,parentDataProperty:"when",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data.unless !== undefined){
if(!(validate65(data.unless, {instancePath:instancePath+"/unless",parentData:data,parentDataProperty:"unless",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data.note !== undefined){
if(!(validate54(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate83.errors = vErrors;
return errors === 0;
}
validate83.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const family_limit = validate88;
const schema30 = {"description":"What is measured against what.","type":"object","properties":{"name":{"description":"What is measured, as the sheet prints it.","$ref":"common.schema.json#/$defs/prose"},"accept":{"description":"What is acceptable.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"from":{"description":"Signed dimensions that it results from, for example [+bearing-bore, -shaft-journal].","type":["string","array"],"x-ref":"dimension","x-signed":true,"items":{"type":"string"}},"void-by":{"description":"Parts that make a result worthless once they are touched again.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"places":{"description":"Where it is measured: a number of places or their names.","$ref":"common.schema.json#/$defs/prose-list"},"figure":{"description":"A figure that shows how to measure it.","type":"string","x-ref":"figure"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name","accept"],"additionalProperties":false,"x-own":true};
const schema31 = {"description":"One text or a list of texts.","type":["string","object","array"],"x-prose":true,"items":{"$ref":"common.schema.json#/$defs/prose"},"properties":{"text":{"description":"The text in the language of the document.","type":"string"},"en":{"description":"The text in English.","type":"string"},"de":{"description":"The text in German.","type":"string"},"es":{"description":"The text in Spanish.","type":"string"}},"required":["text"],"additionalProperties":false};

function validate91(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate91.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema21.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.text === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "text"},message:"must have required property '"+"text"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "text") || (key0 === "en")) || (key0 === "de")) || (key0 === "es"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.text !== undefined){
if(typeof data.text !== "string"){
const err3 = {instancePath:instancePath+"/text",schemaPath:"#/properties/text/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.en !== undefined){
if(typeof data.en !== "string"){
const err4 = {instancePath:instancePath+"/en",schemaPath:"#/properties/en/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.de !== undefined){
if(typeof data.de !== "string"){
const err5 = {instancePath:instancePath+"/de",schemaPath:"#/properties/de/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.es !== undefined){
if(typeof data.es !== "string"){
const err6 = {instancePath:instancePath+"/es",schemaPath:"#/properties/es/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
validate91.errors = vErrors;
return errors === 0;
}
validate91.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate90(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate90.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((!data || typeof data != "object") && (typeof data !== "string")){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema31.type},message:"must be string,object,array"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Array.isArray(data)){
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(!(validate91(data[i0], {instancePath:instancePath+"/" + i0,parentData:data,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.text === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "text"},message:"must have required property '"+"text"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "text") || (key0 === "en")) || (key0 === "de")) || (key0 === "es"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.text !== undefined){
if(typeof data.text !== "string"){
const err3 = {instancePath:instancePath+"/text",schemaPath:"#/properties/text/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.en !== undefined){
if(typeof data.en !== "string"){
const err4 = {instancePath:instancePath+"/en",schemaPath:"#/properties/en/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.de !== undefined){
if(typeof data.de !== "string"){
const err5 = {instancePath:instancePath+"/de",schemaPath:"#/properties/de/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.es !== undefined){
if(typeof data.es !== "string"){
const err6 = {instancePath:instancePath+"/es",schemaPath:"#/properties/es/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
validate90.errors = vErrors;
return errors === 0;
}
validate90.evaluated = {"props":true,"items":true,"dynamicProps":false,"dynamicItems":false};


function validate88(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate88.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.accept === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "accept"},message:"must have required property '"+"accept"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema30.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate54(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.accept !== undefined){
let data1 = data.accept;
if((typeof data1 !== "string") && (!(data1 && typeof data1 == "object" && !Array.isArray(data1)))){
const err3 = {instancePath:instancePath+"/accept",schemaPath:"#/properties/accept/type",keyword:"type",params:{type: schema30.properties.accept.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
for(const key1 in data1){
if(typeof data1[key1] !== "string"){
const err4 = {instancePath:instancePath+"/accept/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/accept/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
}
if(data.from !== undefined){
let data3 = data.from;
if((typeof data3 !== "string") && (!(Array.isArray(data3)))){
const err5 = {instancePath:instancePath+"/from",schemaPath:"#/properties/from/type",keyword:"type",params:{type: schema30.properties.from.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(Array.isArray(data3)){
const len0 = data3.length;
for(let i0=0; i0<len0; i0++){
if(typeof data3[i0] !== "string"){
const err6 = {instancePath:instancePath+"/from/" + i0,schemaPath:"#/properties/from/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
}
if(data["void-by"] !== undefined){
let data5 = data["void-by"];
if((typeof data5 !== "string") && (!(Array.isArray(data5)))){
const err7 = {instancePath:instancePath+"/void-by",schemaPath:"#/properties/void-by/type",keyword:"type",params:{type: schema30.properties["void-by"].type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
if(Array.isArray(data5)){
if(data5.length < 1){
const err8 = {instancePath:instancePath+"/void-by",schemaPath:"#/properties/void-by/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
const len1 = data5.length;
for(let i1=0; i1<len1; i1++){
if(typeof data5[i1] !== "string"){
const err9 = {instancePath:instancePath+"/void-by/" + i1,schemaPath:"#/properties/void-by/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
}
}
if(data.places !== undefined){
if(!(validate90(data.places, {instancePath:instancePath+"/places",parentData:data,parentDataProperty:"places",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate90.errors : vErrors.concat(validate90.errors);
errors = vErrors.length;
}
}
if(data.figure !== undefined){
if(typeof data.figure !== "string"){
const err10 = {instancePath:instancePath+"/figure",schemaPath:"#/properties/figure/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.when !== undefined){
if(!(validate65(data.when, {instancePath:instancePath+"/when",parentData:data,parentDataProperty:"when",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data.unless !== undefined){
if(!(validate65(data.unless, {instancePath:instancePath+"/unless",parentData:data,parentDataProperty:"unless",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data.note !== undefined){
if(!(validate54(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
}
else {
const err11 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
validate88.errors = vErrors;
return errors === 0;
}
validate88.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const family_reading = validate97;
const schema33 = {"description":"A value that is read on the bench and used later.","type":"object","properties":{"name":{"description":"What is read, as the sheet prints it.","$ref":"common.schema.json#/$defs/prose"},"quantity":{"description":"The dimension of the value.","type":"string","enum":["torque","force","length","angle","temperature","pressure","mass","unbalance","time","rotational-speed","voltage","current","resistance","flow","ratio"]},"accept":{"description":"What is acceptable.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true};

function validate97(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate97.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "name") || (key0 === "quantity")) || (key0 === "accept")) || (key0 === "note"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate54(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.quantity !== undefined){
let data1 = data.quantity;
if(typeof data1 !== "string"){
const err2 = {instancePath:instancePath+"/quantity",schemaPath:"#/properties/quantity/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(!(((((((((((((((data1 === "torque") || (data1 === "force")) || (data1 === "length")) || (data1 === "angle")) || (data1 === "temperature")) || (data1 === "pressure")) || (data1 === "mass")) || (data1 === "unbalance")) || (data1 === "time")) || (data1 === "rotational-speed")) || (data1 === "voltage")) || (data1 === "current")) || (data1 === "resistance")) || (data1 === "flow")) || (data1 === "ratio"))){
const err3 = {instancePath:instancePath+"/quantity",schemaPath:"#/properties/quantity/enum",keyword:"enum",params:{allowedValues: schema33.properties.quantity.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.accept !== undefined){
let data2 = data.accept;
if((typeof data2 !== "string") && (!(data2 && typeof data2 == "object" && !Array.isArray(data2)))){
const err4 = {instancePath:instancePath+"/accept",schemaPath:"#/properties/accept/type",keyword:"type",params:{type: schema33.properties.accept.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
for(const key1 in data2){
if(typeof data2[key1] !== "string"){
const err5 = {instancePath:instancePath+"/accept/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/accept/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
}
if(data.note !== undefined){
if(!(validate54(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate97.errors = vErrors;
return errors === 0;
}
validate97.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const family_figure = validate100;
const schema34 = {"description":"A figure.","type":"object","properties":{"file":{"description":"Path of the SVG file, relative to this document.","type":"string","x-path":"figure"},"alt":{"description":"What the figure shows, in words, for whoever cannot see it.","$ref":"common.schema.json#/$defs/prose"},"caption":{"description":"The line printed below the figure.","$ref":"common.schema.json#/$defs/prose"}},"required":["file"],"additionalProperties":false,"x-own":true};

function validate100(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate100.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.file === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "file"},message:"must have required property '"+"file"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((key0 === "file") || (key0 === "alt")) || (key0 === "caption"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.file !== undefined){
if(typeof data.file !== "string"){
const err2 = {instancePath:instancePath+"/file",schemaPath:"#/properties/file/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.alt !== undefined){
if(!(validate54(data.alt, {instancePath:instancePath+"/alt",parentData:data,parentDataProperty:"alt",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.caption !== undefined){
if(!(validate54(data.caption, {instancePath:instancePath+"/caption",parentData:data,parentDataProperty:"caption",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate100.errors = vErrors;
return errors === 0;
}
validate100.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const kit = validate103;
const schema35 = {"$schema":"https://json-schema.org/draft/2020-12/schema","title":"Witnessmark kit bill","description":"What a kit contains, by line, quantity and build.","type":"object","additionalProperties":false,"required":["witnessmark","kit","family","lines"],"properties":{"witnessmark":{"description":"Version of the document format. Always 1.","type":"string","pattern":"^1$"},"kit":{"description":"Number of the kit, exactly as on its box.","type":"string"},"name":{"description":"Name of the kit.","$ref":"common.schema.json#/$defs/prose"},"revision":{"description":"Revision of the kit bill.","type":"string"},"family":{"description":"Path of the family document, relative to this one.","type":"string","x-path":"family"},"lines":{"description":"The lines of the kit bill.","type":"array","items":{}},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"$defs":{"line":{"description":"A line of the kit bill.","type":"object","properties":{"item":{"description":"Item number of the line.","type":"string"},"part":{"description":"The part it supplies.","type":"string","x-ref":"part"},"number":{"description":"Part number, exactly as printed on the bag.","type":"string"},"name":{"description":"Own name of the item, where it differs from the part's.","$ref":"common.schema.json#/$defs/prose"},"quantity":{"description":"How many pieces the kit holds.","type":"string","pattern":"^[1-9]\\d*$"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"replaces":{"description":"Part numbers that this one supersedes.","type":["string","array"],"items":{"type":"string"}},"superseded-by":{"description":"The part number that supersedes this one.","type":"string"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["part","quantity"],"additionalProperties":false,"x-own":true}}};

function validate104(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate104.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema21.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.text === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "text"},message:"must have required property '"+"text"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "text") || (key0 === "en")) || (key0 === "de")) || (key0 === "es"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.text !== undefined){
if(typeof data.text !== "string"){
const err3 = {instancePath:instancePath+"/text",schemaPath:"#/properties/text/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.en !== undefined){
if(typeof data.en !== "string"){
const err4 = {instancePath:instancePath+"/en",schemaPath:"#/properties/en/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.de !== undefined){
if(typeof data.de !== "string"){
const err5 = {instancePath:instancePath+"/de",schemaPath:"#/properties/de/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.es !== undefined){
if(typeof data.es !== "string"){
const err6 = {instancePath:instancePath+"/es",schemaPath:"#/properties/es/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
validate104.errors = vErrors;
return errors === 0;
}
validate104.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate103(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate103.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.witnessmark === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "witnessmark"},message:"must have required property '"+"witnessmark"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.kit === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kit"},message:"must have required property '"+"kit"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.family === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "family"},message:"must have required property '"+"family"+"'"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data.lines === undefined){
const err3 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "lines"},message:"must have required property '"+"lines"+"'"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "witnessmark") || (key0 === "kit")) || (key0 === "name")) || (key0 === "revision")) || (key0 === "family")) || (key0 === "lines")) || (key0 === "note"))){
const err4 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.witnessmark !== undefined){
let data0 = data.witnessmark;
if(typeof data0 === "string"){
if(!pattern3.test(data0)){
const err5 = {instancePath:instancePath+"/witnessmark",schemaPath:"#/properties/witnessmark/pattern",keyword:"pattern",params:{pattern: "^1$"},message:"must match pattern \""+"^1$"+"\""};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
else {
const err6 = {instancePath:instancePath+"/witnessmark",schemaPath:"#/properties/witnessmark/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.kit !== undefined){
if(typeof data.kit !== "string"){
const err7 = {instancePath:instancePath+"/kit",schemaPath:"#/properties/kit/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate104(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate104.errors : vErrors.concat(validate104.errors);
errors = vErrors.length;
}
}
if(data.revision !== undefined){
if(typeof data.revision !== "string"){
const err8 = {instancePath:instancePath+"/revision",schemaPath:"#/properties/revision/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.family !== undefined){
if(typeof data.family !== "string"){
const err9 = {instancePath:instancePath+"/family",schemaPath:"#/properties/family/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data.lines !== undefined){
if(!(Array.isArray(data.lines))){
const err10 = {instancePath:instancePath+"/lines",schemaPath:"#/properties/lines/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.note !== undefined){
if(!(validate104(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate104.errors : vErrors.concat(validate104.errors);
errors = vErrors.length;
}
}
}
else {
const err11 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
validate103.errors = vErrors;
return errors === 0;
}
validate103.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const kit_line = validate107;
const schema37 = {"description":"A line of the kit bill.","type":"object","properties":{"item":{"description":"Item number of the line.","type":"string"},"part":{"description":"The part it supplies.","type":"string","x-ref":"part"},"number":{"description":"Part number, exactly as printed on the bag.","type":"string"},"name":{"description":"Own name of the item, where it differs from the part's.","$ref":"common.schema.json#/$defs/prose"},"quantity":{"description":"How many pieces the kit holds.","type":"string","pattern":"^[1-9]\\d*$"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"replaces":{"description":"Part numbers that this one supersedes.","type":["string","array"],"items":{"type":"string"}},"superseded-by":{"description":"The part number that supersedes this one.","type":"string"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["part","quantity"],"additionalProperties":false,"x-own":true};

function validate109(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate109.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((!data || typeof data != "object") && (typeof data !== "string")){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema25.type},message:"must be string,array,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Array.isArray(data)){
if(data.length < 1){
const err1 = {instancePath,schemaPath:"#/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(!(validate65(data[i0], {instancePath:instancePath+"/" + i0,parentData:data,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(Object.keys(data).length < 1){
const err2 = {instancePath,schemaPath:"#/minProperties",keyword:"minProperties",params:{limit: 1},message:"must NOT have fewer than 1 properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(((key0 === "all") || (key0 === "any")) || (key0 === "none"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.all !== undefined){
if(!(validate65(data.all, {instancePath:instancePath+"/all",parentData:data,parentDataProperty:"all",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data.any !== undefined){
if(!(validate65(data.any, {instancePath:instancePath+"/any",parentData:data,parentDataProperty:"any",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data.none !== undefined){
if(!(validate65(data.none, {instancePath:instancePath+"/none",parentData:data,parentDataProperty:"none",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
}
validate109.errors = vErrors;
return errors === 0;
}
validate109.evaluated = {"props":true,"items":true,"dynamicProps":false,"dynamicItems":false};


function validate107(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate107.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.part === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "part"},message:"must have required property '"+"part"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.quantity === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "quantity"},message:"must have required property '"+"quantity"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema37.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.item !== undefined){
if(typeof data.item !== "string"){
const err3 = {instancePath:instancePath+"/item",schemaPath:"#/properties/item/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.part !== undefined){
if(typeof data.part !== "string"){
const err4 = {instancePath:instancePath+"/part",schemaPath:"#/properties/part/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.number !== undefined){
if(typeof data.number !== "string"){
const err5 = {instancePath:instancePath+"/number",schemaPath:"#/properties/number/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate104(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate104.errors : vErrors.concat(validate104.errors);
errors = vErrors.length;
}
}
if(data.quantity !== undefined){
let data4 = data.quantity;
if(typeof data4 === "string"){
if(!pattern4.test(data4)){
const err6 = {instancePath:instancePath+"/quantity",schemaPath:"#/properties/quantity/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
else {
const err7 = {instancePath:instancePath+"/quantity",schemaPath:"#/properties/quantity/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.when !== undefined){
if(!(validate109(data.when, {instancePath:instancePath+"/when",parentData:data,parentDataProperty:"when",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate109.errors : vErrors.concat(validate109.errors);
errors = vErrors.length;
}
}
if(data.unless !== undefined){
if(!(validate109(data.unless, {instancePath:instancePath+"/unless",parentData:data,parentDataProperty:"unless",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate109.errors : vErrors.concat(validate109.errors);
errors = vErrors.length;
}
}
if(data.replaces !== undefined){
let data7 = data.replaces;
if((typeof data7 !== "string") && (!(Array.isArray(data7)))){
const err8 = {instancePath:instancePath+"/replaces",schemaPath:"#/properties/replaces/type",keyword:"type",params:{type: schema37.properties.replaces.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
if(Array.isArray(data7)){
const len0 = data7.length;
for(let i0=0; i0<len0; i0++){
if(typeof data7[i0] !== "string"){
const err9 = {instancePath:instancePath+"/replaces/" + i0,schemaPath:"#/properties/replaces/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
}
}
if(data["superseded-by"] !== undefined){
if(typeof data["superseded-by"] !== "string"){
const err10 = {instancePath:instancePath+"/superseded-by",schemaPath:"#/properties/superseded-by/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.note !== undefined){
if(!(validate104(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate104.errors : vErrors.concat(validate104.errors);
errors = vErrors.length;
}
}
}
else {
const err11 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
validate107.errors = vErrors;
return errors === 0;
}
validate107.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const stores = validate117;
const schema39 = {"$schema":"https://json-schema.org/draft/2020-12/schema","title":"Witnessmark stores","description":"The tools and consumables that the shop holds.","type":"object","additionalProperties":false,"required":["witnessmark","stores"],"properties":{"witnessmark":{"description":"Version of the document format. Always 1.","type":"string","pattern":"^1$"},"stores":{"description":"Name of the stores.","type":"string"},"tools":{"description":"The tools by id.","type":"object","x-id":"tool","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"consumables":{"description":"The consumables by id.","type":"object","x-id":"consumable","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"$defs":{"tool":{"description":"A tool.","type":"object","properties":{"name":{"description":"What the sheet calls the tool.","$ref":"common.schema.json#/$defs/prose"},"also":{"description":"Other names of it.","type":["string","array"],"items":{"type":"string"}},"kind":{"description":"What sort of tool it is.","type":"string","enum":["torque-wrench","torque-screwdriver","socket","bit","crow-foot","spanner","hexagon-key","screwdriver","extension","ratchet","t-handle","angle-gauge","ring-pliers","pliers","ring-compressor","puller","press","arbor","holding-fixture","soft-hammer","gauge","micrometer","calliper","bore-gauge","feeler","indicator","scale","balance-machine","oven","hot-plate","thermometer","pressure-source","pressure-gauge","vacuum-source","wash-tank","ultrasonic-bath","blast-cabinet","brush","scraper","marker","lamp","lifting-gear","other"]},"number":{"description":"Inventory number.","type":"string"},"size":{"description":"Width across flats it fits.","type":"string","x-quantity":"length"},"drive-size":{"description":"Size of a drive that has no width across flats, for example T30.","type":"string"},"resolution":{"description":"Smallest step that can be read.","type":"string","x-quantity":"any"},"range":{"description":"Smallest to largest value that it measures or sets.","type":"string","x-quantity":"any"},"accuracy":{"description":"Permissible deviation, in per cent of the value or as a value.","type":"string","x-quantity":"any"},"square":{"description":"Square drive.","type":"string","x-quantity":"length"},"length":{"description":"From the middle of the square to the middle of the grip, where a torque wrench is pulled; of an extension bar, its length.","type":"string","x-quantity":"length"},"offset":{"description":"From the middle of its square to the middle of the fastener, of a crow-foot or another head that stands out from the wrench.","type":"string","x-quantity":"length"},"set-at":{"description":"Angle at which it always stands to the wrench: 0° straight on; 90° square to it, where the setting needs no correction.","type":"string","x-quantity":"angle"},"direction":{"description":"Which way a torque tool measures: right (clockwise) only, or both.","type":"string","enum":["right","both"]},"torque-type":{"description":"Type and class as ISO 6789-1 writes it, for example II A.","type":"string"},"calibration-due":{"description":"Day on which its calibration ends.","type":"string","pattern":"^\\d{4}-\\d{2}-\\d{2}$","x-date":true},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true},"consumable":{"description":"A consumable.","type":"object","properties":{"name":{"description":"What the sheet calls the consumable.","$ref":"common.schema.json#/$defs/prose"},"also":{"description":"Other names of it.","type":["string","array"],"items":{"type":"string"}},"kind":{"description":"What sort of consumable it is.","type":"string","enum":["threadlocker","sealant","oil","grease","anti-seize","assembly-paste","solvent","cleaner","penetrant","marking-compound","paint","blast-media","wipe","plug-cap","wire","abrasive","other"]},"number":{"description":"Order number.","type":"string"},"cure":{"description":"Time until it has set.","type":"string","x-quantity":"time"},"max-temperature":{"description":"Highest temperature it stands in service.","type":"string","x-quantity":"temperature"},"hazards":{"description":"Hazard statements of its safety data sheet, by GHS code.","type":["string","array"],"items":{"type":"string","pattern":"^(EU)?H\\d{3}[A-Za-z]{0,2}(\\+H\\d{3})*$"}},"signal-word":{"description":"Signal word of its label.","type":"string","enum":["danger","warning"]},"data-sheet":{"description":"Which safety data sheet the hazards are from, with its date.","type":"string"},"expires":{"description":"Day after which it must not be used.","type":"string","pattern":"^\\d{4}-\\d{2}-\\d{2}$","x-date":true},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true}}};

function validate118(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate118.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema21.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.text === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "text"},message:"must have required property '"+"text"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "text") || (key0 === "en")) || (key0 === "de")) || (key0 === "es"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.text !== undefined){
if(typeof data.text !== "string"){
const err3 = {instancePath:instancePath+"/text",schemaPath:"#/properties/text/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.en !== undefined){
if(typeof data.en !== "string"){
const err4 = {instancePath:instancePath+"/en",schemaPath:"#/properties/en/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.de !== undefined){
if(typeof data.de !== "string"){
const err5 = {instancePath:instancePath+"/de",schemaPath:"#/properties/de/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.es !== undefined){
if(typeof data.es !== "string"){
const err6 = {instancePath:instancePath+"/es",schemaPath:"#/properties/es/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
validate118.errors = vErrors;
return errors === 0;
}
validate118.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate117(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate117.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.witnessmark === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "witnessmark"},message:"must have required property '"+"witnessmark"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.stores === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "stores"},message:"must have required property '"+"stores"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(((((key0 === "witnessmark") || (key0 === "stores")) || (key0 === "tools")) || (key0 === "consumables")) || (key0 === "note"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.witnessmark !== undefined){
let data0 = data.witnessmark;
if(typeof data0 === "string"){
if(!pattern3.test(data0)){
const err3 = {instancePath:instancePath+"/witnessmark",schemaPath:"#/properties/witnessmark/pattern",keyword:"pattern",params:{pattern: "^1$"},message:"must match pattern \""+"^1$"+"\""};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
else {
const err4 = {instancePath:instancePath+"/witnessmark",schemaPath:"#/properties/witnessmark/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.stores !== undefined){
if(typeof data.stores !== "string"){
const err5 = {instancePath:instancePath+"/stores",schemaPath:"#/properties/stores/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.tools !== undefined){
let data2 = data.tools;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
}
else {
const err6 = {instancePath:instancePath+"/tools",schemaPath:"#/properties/tools/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.consumables !== undefined){
let data3 = data.consumables;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
}
else {
const err7 = {instancePath:instancePath+"/consumables",schemaPath:"#/properties/consumables/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.note !== undefined){
if(!(validate118(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate118.errors : vErrors.concat(validate118.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate117.errors = vErrors;
return errors === 0;
}
validate117.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const stores_tool = validate120;
const schema41 = {"description":"A tool.","type":"object","properties":{"name":{"description":"What the sheet calls the tool.","$ref":"common.schema.json#/$defs/prose"},"also":{"description":"Other names of it.","type":["string","array"],"items":{"type":"string"}},"kind":{"description":"What sort of tool it is.","type":"string","enum":["torque-wrench","torque-screwdriver","socket","bit","crow-foot","spanner","hexagon-key","screwdriver","extension","ratchet","t-handle","angle-gauge","ring-pliers","pliers","ring-compressor","puller","press","arbor","holding-fixture","soft-hammer","gauge","micrometer","calliper","bore-gauge","feeler","indicator","scale","balance-machine","oven","hot-plate","thermometer","pressure-source","pressure-gauge","vacuum-source","wash-tank","ultrasonic-bath","blast-cabinet","brush","scraper","marker","lamp","lifting-gear","other"]},"number":{"description":"Inventory number.","type":"string"},"size":{"description":"Width across flats it fits.","type":"string","x-quantity":"length"},"drive-size":{"description":"Size of a drive that has no width across flats, for example T30.","type":"string"},"resolution":{"description":"Smallest step that can be read.","type":"string","x-quantity":"any"},"range":{"description":"Smallest to largest value that it measures or sets.","type":"string","x-quantity":"any"},"accuracy":{"description":"Permissible deviation, in per cent of the value or as a value.","type":"string","x-quantity":"any"},"square":{"description":"Square drive.","type":"string","x-quantity":"length"},"length":{"description":"From the middle of the square to the middle of the grip, where a torque wrench is pulled; of an extension bar, its length.","type":"string","x-quantity":"length"},"offset":{"description":"From the middle of its square to the middle of the fastener, of a crow-foot or another head that stands out from the wrench.","type":"string","x-quantity":"length"},"set-at":{"description":"Angle at which it always stands to the wrench: 0° straight on; 90° square to it, where the setting needs no correction.","type":"string","x-quantity":"angle"},"direction":{"description":"Which way a torque tool measures: right (clockwise) only, or both.","type":"string","enum":["right","both"]},"torque-type":{"description":"Type and class as ISO 6789-1 writes it, for example II A.","type":"string"},"calibration-due":{"description":"Day on which its calibration ends.","type":"string","pattern":"^\\d{4}-\\d{2}-\\d{2}$","x-date":true},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true};
const pattern18 = new RegExp("^\\d{4}-\\d{2}-\\d{2}$", "u");

function validate120(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate120.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema41.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate118(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate118.errors : vErrors.concat(validate118.errors);
errors = vErrors.length;
}
}
if(data.also !== undefined){
let data1 = data.also;
if((typeof data1 !== "string") && (!(Array.isArray(data1)))){
const err2 = {instancePath:instancePath+"/also",schemaPath:"#/properties/also/type",keyword:"type",params:{type: schema41.properties.also.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(Array.isArray(data1)){
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err3 = {instancePath:instancePath+"/also/" + i0,schemaPath:"#/properties/also/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.kind !== undefined){
let data3 = data.kind;
if(typeof data3 !== "string"){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(!(((((((((((((((((((((((((((((((((((((((((((data3 === "torque-wrench") || (data3 === "torque-screwdriver")) || (data3 === "socket")) || (data3 === "bit")) || (data3 === "crow-foot")) || (data3 === "spanner")) || (data3 === "hexagon-key")) || (data3 === "screwdriver")) || (data3 === "extension")) || (data3 === "ratchet")) || (data3 === "t-handle")) || (data3 === "angle-gauge")) || (data3 === "ring-pliers")) || (data3 === "pliers")) || (data3 === "ring-compressor")) || (data3 === "puller")) || (data3 === "press")) || (data3 === "arbor")) || (data3 === "holding-fixture")) || (data3 === "soft-hammer")) || (data3 === "gauge")) || (data3 === "micrometer")) || (data3 === "calliper")) || (data3 === "bore-gauge")) || (data3 === "feeler")) || (data3 === "indicator")) || (data3 === "scale")) || (data3 === "balance-machine")) || (data3 === "oven")) || (data3 === "hot-plate")) || (data3 === "thermometer")) || (data3 === "pressure-source")) || (data3 === "pressure-gauge")) || (data3 === "vacuum-source")) || (data3 === "wash-tank")) || (data3 === "ultrasonic-bath")) || (data3 === "blast-cabinet")) || (data3 === "brush")) || (data3 === "scraper")) || (data3 === "marker")) || (data3 === "lamp")) || (data3 === "lifting-gear")) || (data3 === "other"))){
const err5 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/enum",keyword:"enum",params:{allowedValues: schema41.properties.kind.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.number !== undefined){
if(typeof data.number !== "string"){
const err6 = {instancePath:instancePath+"/number",schemaPath:"#/properties/number/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.size !== undefined){
if(typeof data.size !== "string"){
const err7 = {instancePath:instancePath+"/size",schemaPath:"#/properties/size/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data["drive-size"] !== undefined){
if(typeof data["drive-size"] !== "string"){
const err8 = {instancePath:instancePath+"/drive-size",schemaPath:"#/properties/drive-size/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.resolution !== undefined){
if(typeof data.resolution !== "string"){
const err9 = {instancePath:instancePath+"/resolution",schemaPath:"#/properties/resolution/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data.range !== undefined){
if(typeof data.range !== "string"){
const err10 = {instancePath:instancePath+"/range",schemaPath:"#/properties/range/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.accuracy !== undefined){
if(typeof data.accuracy !== "string"){
const err11 = {instancePath:instancePath+"/accuracy",schemaPath:"#/properties/accuracy/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data.square !== undefined){
if(typeof data.square !== "string"){
const err12 = {instancePath:instancePath+"/square",schemaPath:"#/properties/square/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.length !== undefined){
if(typeof data.length !== "string"){
const err13 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data.offset !== undefined){
if(typeof data.offset !== "string"){
const err14 = {instancePath:instancePath+"/offset",schemaPath:"#/properties/offset/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data["set-at"] !== undefined){
if(typeof data["set-at"] !== "string"){
const err15 = {instancePath:instancePath+"/set-at",schemaPath:"#/properties/set-at/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data.direction !== undefined){
let data14 = data.direction;
if(typeof data14 !== "string"){
const err16 = {instancePath:instancePath+"/direction",schemaPath:"#/properties/direction/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
if(!((data14 === "right") || (data14 === "both"))){
const err17 = {instancePath:instancePath+"/direction",schemaPath:"#/properties/direction/enum",keyword:"enum",params:{allowedValues: schema41.properties.direction.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data["torque-type"] !== undefined){
if(typeof data["torque-type"] !== "string"){
const err18 = {instancePath:instancePath+"/torque-type",schemaPath:"#/properties/torque-type/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
if(data["calibration-due"] !== undefined){
let data16 = data["calibration-due"];
if(typeof data16 === "string"){
if(!pattern18.test(data16)){
const err19 = {instancePath:instancePath+"/calibration-due",schemaPath:"#/properties/calibration-due/pattern",keyword:"pattern",params:{pattern: "^\\d{4}-\\d{2}-\\d{2}$"},message:"must match pattern \""+"^\\d{4}-\\d{2}-\\d{2}$"+"\""};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
else {
const err20 = {instancePath:instancePath+"/calibration-due",schemaPath:"#/properties/calibration-due/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
if(data.note !== undefined){
if(!(validate118(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate118.errors : vErrors.concat(validate118.errors);
errors = vErrors.length;
}
}
}
else {
const err21 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
validate120.errors = vErrors;
return errors === 0;
}
validate120.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const stores_consumable = validate123;
const schema42 = {"description":"A consumable.","type":"object","properties":{"name":{"description":"What the sheet calls the consumable.","$ref":"common.schema.json#/$defs/prose"},"also":{"description":"Other names of it.","type":["string","array"],"items":{"type":"string"}},"kind":{"description":"What sort of consumable it is.","type":"string","enum":["threadlocker","sealant","oil","grease","anti-seize","assembly-paste","solvent","cleaner","penetrant","marking-compound","paint","blast-media","wipe","plug-cap","wire","abrasive","other"]},"number":{"description":"Order number.","type":"string"},"cure":{"description":"Time until it has set.","type":"string","x-quantity":"time"},"max-temperature":{"description":"Highest temperature it stands in service.","type":"string","x-quantity":"temperature"},"hazards":{"description":"Hazard statements of its safety data sheet, by GHS code.","type":["string","array"],"items":{"type":"string","pattern":"^(EU)?H\\d{3}[A-Za-z]{0,2}(\\+H\\d{3})*$"}},"signal-word":{"description":"Signal word of its label.","type":"string","enum":["danger","warning"]},"data-sheet":{"description":"Which safety data sheet the hazards are from, with its date.","type":"string"},"expires":{"description":"Day after which it must not be used.","type":"string","pattern":"^\\d{4}-\\d{2}-\\d{2}$","x-date":true},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true};
const pattern19 = new RegExp("^(EU)?H\\d{3}[A-Za-z]{0,2}(\\+H\\d{3})*$", "u");

function validate123(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate123.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema42.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate118(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate118.errors : vErrors.concat(validate118.errors);
errors = vErrors.length;
}
}
if(data.also !== undefined){
let data1 = data.also;
if((typeof data1 !== "string") && (!(Array.isArray(data1)))){
const err2 = {instancePath:instancePath+"/also",schemaPath:"#/properties/also/type",keyword:"type",params:{type: schema42.properties.also.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(Array.isArray(data1)){
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err3 = {instancePath:instancePath+"/also/" + i0,schemaPath:"#/properties/also/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.kind !== undefined){
let data3 = data.kind;
if(typeof data3 !== "string"){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(!(((((((((((((((((data3 === "threadlocker") || (data3 === "sealant")) || (data3 === "oil")) || (data3 === "grease")) || (data3 === "anti-seize")) || (data3 === "assembly-paste")) || (data3 === "solvent")) || (data3 === "cleaner")) || (data3 === "penetrant")) || (data3 === "marking-compound")) || (data3 === "paint")) || (data3 === "blast-media")) || (data3 === "wipe")) || (data3 === "plug-cap")) || (data3 === "wire")) || (data3 === "abrasive")) || (data3 === "other"))){
const err5 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/enum",keyword:"enum",params:{allowedValues: schema42.properties.kind.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.number !== undefined){
if(typeof data.number !== "string"){
const err6 = {instancePath:instancePath+"/number",schemaPath:"#/properties/number/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.cure !== undefined){
if(typeof data.cure !== "string"){
const err7 = {instancePath:instancePath+"/cure",schemaPath:"#/properties/cure/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data["max-temperature"] !== undefined){
if(typeof data["max-temperature"] !== "string"){
const err8 = {instancePath:instancePath+"/max-temperature",schemaPath:"#/properties/max-temperature/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.hazards !== undefined){
let data7 = data.hazards;
if((typeof data7 !== "string") && (!(Array.isArray(data7)))){
const err9 = {instancePath:instancePath+"/hazards",schemaPath:"#/properties/hazards/type",keyword:"type",params:{type: schema42.properties.hazards.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
if(Array.isArray(data7)){
const len1 = data7.length;
for(let i1=0; i1<len1; i1++){
let data8 = data7[i1];
if(typeof data8 === "string"){
if(!pattern19.test(data8)){
const err10 = {instancePath:instancePath+"/hazards/" + i1,schemaPath:"#/properties/hazards/items/pattern",keyword:"pattern",params:{pattern: "^(EU)?H\\d{3}[A-Za-z]{0,2}(\\+H\\d{3})*$"},message:"must match pattern \""+"^(EU)?H\\d{3}[A-Za-z]{0,2}(\\+H\\d{3})*$"+"\""};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
else {
const err11 = {instancePath:instancePath+"/hazards/" + i1,schemaPath:"#/properties/hazards/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
}
}
if(data["signal-word"] !== undefined){
let data9 = data["signal-word"];
if(typeof data9 !== "string"){
const err12 = {instancePath:instancePath+"/signal-word",schemaPath:"#/properties/signal-word/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
if(!((data9 === "danger") || (data9 === "warning"))){
const err13 = {instancePath:instancePath+"/signal-word",schemaPath:"#/properties/signal-word/enum",keyword:"enum",params:{allowedValues: schema42.properties["signal-word"].enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data["data-sheet"] !== undefined){
if(typeof data["data-sheet"] !== "string"){
const err14 = {instancePath:instancePath+"/data-sheet",schemaPath:"#/properties/data-sheet/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.expires !== undefined){
let data11 = data.expires;
if(typeof data11 === "string"){
if(!pattern18.test(data11)){
const err15 = {instancePath:instancePath+"/expires",schemaPath:"#/properties/expires/pattern",keyword:"pattern",params:{pattern: "^\\d{4}-\\d{2}-\\d{2}$"},message:"must match pattern \""+"^\\d{4}-\\d{2}-\\d{2}$"+"\""};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
else {
const err16 = {instancePath:instancePath+"/expires",schemaPath:"#/properties/expires/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data.note !== undefined){
if(!(validate118(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate118.errors : vErrors.concat(validate118.errors);
errors = vErrors.length;
}
}
}
else {
const err17 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
validate123.errors = vErrors;
return errors === 0;
}
validate123.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure = validate126;
const schema43 = {"$schema":"https://json-schema.org/draft/2020-12/schema","title":"Witnessmark procedure","description":"A rebuild procedure: phases and steps for the builds that it covers.","type":"object","additionalProperties":false,"required":["witnessmark","procedure","title","revision","family","phases"],"properties":{"witnessmark":{"description":"Version of the document format. Always 1.","type":"string","pattern":"^1$"},"procedure":{"description":"Number of the procedure.","type":"string"},"title":{"description":"Title of the procedure.","$ref":"common.schema.json#/$defs/prose"},"revision":{"description":"Revision, by letter or number.","type":"string"},"status":{"description":"Where it stands in its life.","type":"string","enum":["draft","released","withdrawn"]},"family":{"description":"Path of the family document, relative to this one.","type":"string","x-path":"family"},"kit":{"description":"Path of the kit bill, or a list of them.","type":["string","array"],"x-path":"kit","items":{"type":"string"}},"stores":{"description":"Path of the stores document, or a list of them.","type":["string","array"],"x-path":"stores","items":{"type":"string"}},"covers":{"description":"The units it covers.","type":"object","properties":{"variants":{"description":"Variants that it covers; all where none is named.","type":["string","array"],"x-ref":"variant","items":{"type":"string"},"minItems":1},"options":{"description":"Options that a unit may arrive with; none where the list is absent. A procedure without `covers` covers the whole family.","type":["string","array"],"x-ref":"option","items":{"type":"string"}}},"required":[],"additionalProperties":false},"adds":{"description":"Options that may be fitted by this procedure.","type":["string","array"],"x-ref":"option","items":{"type":"string"}},"starts":{"description":"How the unit is at the start: assembled, parts, or an assembly of the family.","type":"string","x-ref":"assembly","x-words":["assembled","parts"]},"ends":{"description":"How the unit is at the end: assembled, parts, or an assembly of the family.","type":"string","x-ref":"assembly","x-words":["assembled","parts"]},"prepared-by":{"description":"Who prepared it.","type":"string"},"checked-by":{"description":"Who checked it.","type":"string"},"approved-by":{"description":"Who approved it.","type":"string"},"revisions":{"description":"What changed, newest first.","type":"array","items":{}},"tools":{"description":"Tools the fitter lays out before starting.","type":["string","array"],"x-ref":"tool","x-listing":true,"items":{"type":"string"}},"consumables":{"description":"Consumables the fitter lays out before starting.","type":["string","array"],"x-ref":"consumable","x-listing":true,"items":{"type":"string"}},"protective-equipment":{"description":"What the fitter wears.","$ref":"common.schema.json#/$defs/prose-list"},"readings":{"description":"Values that are read and used later in this procedure.","type":"object","x-id":"reading","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"figures":{"description":"Figures by id.","type":"object","x-id":"figure","propertyNames":{"x-pattern":"id"},"additionalProperties":{}},"before-you-start":{"description":"What must be known before the first step.","type":"array","items":{}},"phases":{"description":"The phases in their order.","type":"array","items":{}},"concessions":{"description":"Findings that are let stand, each at one step.","type":"array","items":{}},"at-installation":{"description":"What whoever installs the unit must do.","$ref":"common.schema.json#/$defs/prose-list"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"$defs":{"revision":{"description":"A revision of the procedure.","type":"object","properties":{"revision":{"description":"The revision.","type":"string"},"date":{"description":"Day of the revision.","type":"string","pattern":"^\\d{4}-\\d{2}-\\d{2}$","x-date":true},"what":{"description":"What changed.","$ref":"common.schema.json#/$defs/prose"},"by":{"description":"Who changed it.","type":"string"}},"required":["revision","what"],"additionalProperties":false,"x-own":true},"notice-line":{"description":"A text, or a warning, caution or notice.","type":["string","object"],"x-shorthand":"say","x-own":true,"properties":{"say":{"description":"A plain text.","$ref":"common.schema.json#/$defs/prose"},"warning":{"description":"What could kill or seriously injure if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"caution":{"description":"What could injure slightly or moderately if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"notice":{"description":"What could damage parts or equipment; not about injury. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"figure":{"description":"A figure that shows it.","type":"string","x-ref":"figure"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"additionalProperties":false},"phase":{"description":"A phase of the work.","type":"object","properties":{"phase":{"description":"Name of the phase.","$ref":"common.schema.json#/$defs/prose"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"warning":{"description":"What could kill or seriously injure if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"caution":{"description":"What could injure slightly or moderately if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"notice":{"description":"What could damage parts or equipment; not about injury. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"},"steps":{"description":"The steps in their order.","type":"array","items":{}}},"required":["phase","steps"],"additionalProperties":false,"x-own":true},"step":{"description":"A step.","type":"object","properties":{"step":{"description":"Id of the step.","type":"string","x-declares":"step"},"title":{"description":"What is done, in a few words.","$ref":"common.schema.json#/$defs/prose"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"sign":{"description":"Who must sign before the work goes on.","type":"string","enum":["fitter","inspector","supervisor","customer"]},"people":{"description":"How many people it takes.","type":"string","pattern":"^[1-9]\\d*$"},"optional":{"description":"The step may be left out.","type":"string","pattern":"^(true|false)$"},"figure":{"description":"A figure that shows it.","type":["string","array"],"x-ref":"figure","items":{"type":"string"},"minItems":1},"warning":{"description":"What could kill or seriously injure if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"caution":{"description":"What could injure slightly or moderately if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"notice":{"description":"What could damage parts or equipment; not about injury. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"},"do":{"description":"The instructions in their order.","type":"array","items":{}}},"required":["step","title","do"],"additionalProperties":false,"x-own":true},"tool-use":{"description":"A tool, or a tool and how many of it.","type":["string","object"],"properties":{"tool":{"description":"The tool.","type":"string","x-ref":"tool"},"count":{"description":"How many of it.","type":"string","pattern":"^[1-9]\\d*$"}},"required":["tool"],"additionalProperties":false},"hold":{"description":"Where it is held, and with what.","type":["string","object"],"x-shorthand":"at","properties":{"at":{"description":"Where it is held.","$ref":"common.schema.json#/$defs/prose"},"with":{"description":"Tools it is done with.","type":["string","array","object"],"x-ref":"tool","x-shorthand":"tool","items":{"$ref":"#/$defs/tool-use"},"properties":{"tool":{"description":"The tool.","type":"string","x-ref":"tool"},"count":{"description":"How many of it.","type":"string","pattern":"^[1-9]\\d*$"}},"required":["tool"],"additionalProperties":false}},"required":["at"],"additionalProperties":false},"if-not":{"description":"What to do when it is not as it should be.","type":"object","properties":{"replace":{"description":"Parts to renew.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"reject":{"description":"The unit or part is rejected; stop and ask.","type":"string","pattern":"^(true|false)$"},"go-to":{"description":"An earlier step to go back to.","type":"string","x-ref":"step"},"at-most":{"description":"How many times.","type":"string","pattern":"^[1-9]\\d*$"},"then":{"description":"What to do when it is still not right.","$ref":"common.schema.json#/$defs/prose"},"do":{"description":"Further instructions.","type":"array","items":{}},"say":{"description":"What to do, in words.","$ref":"common.schema.json#/$defs/prose"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":[],"additionalProperties":false},"instruction":{},"instruction-keys":{"description":"Keys that every instruction may have.","type":"object","x-order":["to","across","when","unless","…","with","using","hold","accept","look-for","places","say","warning","caution","notice","figure","if-not","note"],"properties":{"with":{"description":"Tools it is done with.","type":["string","array","object"],"x-ref":"tool","x-shorthand":"tool","items":{"$ref":"#/$defs/tool-use"},"properties":{"tool":{"description":"The tool.","type":"string","x-ref":"tool"},"count":{"description":"How many of it.","type":"string","pattern":"^[1-9]\\d*$"}},"required":["tool"],"additionalProperties":false},"using":{"description":"Consumables it is done with.","type":["string","array"],"x-ref":"consumable","items":{"type":"string"},"minItems":1},"say":{"description":"Own wording, printed instead of the written sentence.","$ref":"common.schema.json#/$defs/prose"},"warning":{"description":"What could kill or seriously injure if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"caution":{"description":"What could injure slightly or moderately if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"notice":{"description":"What could damage parts or equipment; not about injury. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"figure":{"description":"A figure that shows it.","type":["string","array"],"x-ref":"figure","items":{"type":"string"},"minItems":1},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}}},"sentence":{"description":"An instruction in words alone.","type":"object","x-own":true,"x-verb":"say","x-shorthand":"say","allOf":[{"$ref":"#/$defs/instruction-keys"}],"required":["say"],"unevaluatedProperties":false},"verb-loosen":{"description":"Loosen a fastener without taking it off.","type":"object","x-own":true,"x-verb":"loosen","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"loosen":{"description":"Fasteners to loosen.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"hold":{"description":"What is counter-held, and with what.","$ref":"#/$defs/hold"}},"required":["loosen"],"unevaluatedProperties":false},"verb-remove":{"description":"Take a part off.","type":"object","x-own":true,"x-verb":"remove","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"remove":{"description":"Parts to take off.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"hold":{"description":"What is counter-held, and with what.","$ref":"#/$defs/hold"},"count":{"description":"How many pieces, where not all.","type":"string","pattern":"^[1-9]\\d*$"}},"required":["remove"],"unevaluatedProperties":false},"verb-install":{"description":"Fit a part.","type":"object","x-own":true,"x-verb":"install","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"install":{"description":"Parts to fit.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"count":{"description":"How many pieces, where not all.","type":"string","pattern":"^[1-9]\\d*$"},"place":{"description":"The part it is fitted to, where there are several.","type":"string","x-ref":"part"},"orient":{"description":"How it faces.","$ref":"common.schema.json#/$defs/prose"},"locate":{"description":"What it locates on.","$ref":"common.schema.json#/$defs/prose"},"trial":{"description":"A trial fit: it comes off again.","type":"string","pattern":"^(true|false)$"}},"required":["install"],"unevaluatedProperties":false},"verb-seat":{"description":"Seat a ring that was only released.","type":"object","x-own":true,"x-verb":"seat","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"seat":{"description":"Rings to seat.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1}},"required":["seat"],"unevaluatedProperties":false},"verb-tighten":{"description":"Tighten a fastener.","type":"object","x-own":true,"x-verb":"tighten","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"tighten":{"description":"Fasteners to tighten.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"torque":{"description":"Torque with unit and tolerance.","type":["string","object"],"x-quantity":"torque","x-by-build":true,"additionalProperties":{"type":"string"}},"angle":{"description":"Angle turned after the torque.","type":["string","object"],"x-quantity":"angle","x-by-build":true,"additionalProperties":{"type":"string"}},"passes":{"description":"Torque of each pass; the last is the final one.","type":"array","x-quantity":"torque","items":{"type":"string"}},"in-order":{"description":"Order of the pieces.","type":["string","array"],"items":{"type":"string"}},"plus":{"description":"A reading that is added to the torque, such as the prevailing torque.","type":"string","x-ref":"reading"},"count":{"description":"How many pieces, where not all.","type":"string","pattern":"^[1-9]\\d*$"},"hold":{"description":"What is counter-held, and with what.","$ref":"#/$defs/hold"}},"required":["tighten"],"unevaluatedProperties":false},"verb-apply":{"description":"Put a consumable on.","type":"object","x-own":true,"x-verb":"apply","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"apply":{"description":"What is applied.","type":["string","array"],"x-ref":"consumable","items":{"type":"string"},"minItems":1},"to":{"description":"Parts it is applied to.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"at":{"description":"Where on the part: thread, face, bore.","$ref":"common.schema.json#/$defs/prose"},"amount":{"description":"How much of it.","$ref":"common.schema.json#/$defs/prose"}},"required":["apply"],"unevaluatedProperties":false},"verb-clean":{"description":"Clean a part.","type":"object","x-own":true,"x-verb":"clean","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"clean":{"description":"Parts to clean.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"at":{"description":"Where on the part, where not all of it: thread, bore, groove.","$ref":"common.schema.json#/$defs/prose"},"by":{"description":"How it is cleaned.","type":"string","enum":["wash","ultrasonic","brush","wire-brush","wipe","blast","caustic","solvent","steam","compressed-air"]}},"required":["clean"],"unevaluatedProperties":false},"verb-identify":{"description":"Find out what only the bench can tell.","type":"object","x-own":true,"x-verb":"identify","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"identify":{"description":"What is found out.","type":"string","x-ref":"outcome"}},"required":["identify"],"unevaluatedProperties":false},"verb-inspect":{"description":"Look a part over.","type":"object","x-own":true,"x-verb":"inspect","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"inspect":{"description":"Parts to inspect.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"look-for":{"description":"What to look for.","$ref":"common.schema.json#/$defs/prose-list"},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["inspect"],"unevaluatedProperties":false},"verb-measure":{"description":"Measure something against its limit.","type":"object","x-own":true,"x-verb":"measure","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"measure":{"description":"What is measured.","type":"string","x-ref":"limit-or-reading"},"accept":{"description":"What is acceptable; `record-only` where the value is only written down.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"places":{"description":"Where it is measured: a number of places or their names.","$ref":"common.schema.json#/$defs/prose-list"},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["measure"],"unevaluatedProperties":false},"verb-calculate":{"description":"Work a value out of readings.","type":"object","x-own":true,"x-verb":"calculate","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"calculate":{"description":"What is worked out.","type":"string","x-ref":"limit-or-reading"},"from":{"description":"Signed readings and quantities, for example [+bore-read, -journal-read].","type":["string","array"],"x-ref":"limit-or-reading","x-signed":true,"items":{"type":"string"}},"accept":{"description":"What is acceptable; `record-only` where the value is only written down.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["calculate"],"unevaluatedProperties":false},"verb-choose":{"description":"Choose the size of a part.","type":"object","x-own":true,"x-verb":"choose","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"choose":{"description":"The part that comes in sizes.","type":"string","x-ref":"part"},"size":{"description":"Reading and signed quantities that give the size.","type":["string","array"],"x-ref":"limit-or-reading","x-signed":true,"items":{"type":"string"}}},"required":["choose"],"unevaluatedProperties":false},"verb-mark":{"description":"Mark the position of parts to each other.","type":"object","x-own":true,"x-verb":"mark","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"mark":{"description":"Parts to mark.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"by":{"description":"How the mark is made; cleaning takes off paint.","type":"string","enum":["scribe","punch","paint","etch"]},"across":{"description":"Parts that the mark runs across to.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1}},"required":["mark"],"unevaluatedProperties":false},"verb-align":{"description":"Bring parts back to their marks.","type":"object","x-own":true,"x-verb":"align","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"align":{"description":"Parts to align.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"to":{"description":"Parts to align it to.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1}},"required":["align"],"unevaluatedProperties":false},"verb-press":{"description":"Press a part in or on.","type":"object","x-own":true,"x-verb":"press","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"press":{"description":"Parts to press.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"force":{"description":"Force not to be exceeded.","type":"string","x-quantity":"force"},"to":{"description":"How far.","$ref":"common.schema.json#/$defs/prose"},"place":{"description":"The part it is pressed into or onto, where there are several.","type":"string","x-ref":"part"},"orient":{"description":"How it faces.","$ref":"common.schema.json#/$defs/prose"},"locate":{"description":"What it locates on.","$ref":"common.schema.json#/$defs/prose"}},"required":["press"],"unevaluatedProperties":false},"verb-heat":{"description":"Heat a part.","type":"object","x-own":true,"x-verb":"heat","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"heat":{"description":"Parts to heat.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"until":{"description":"Temperature to reach.","type":"string","x-quantity":"temperature"}},"required":["heat"],"unevaluatedProperties":false},"verb-cool":{"description":"Cool a part.","type":"object","x-own":true,"x-verb":"cool","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"cool":{"description":"Parts to cool.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"until":{"description":"Temperature to reach.","type":"string","x-quantity":"temperature"}},"required":["cool"],"unevaluatedProperties":false},"verb-balance":{"description":"Balance a group of parts.","type":"object","x-own":true,"x-verb":"balance","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"balance":{"description":"The group.","type":"string","x-ref":"balance-group"},"grade":{"description":"Balance grade, where it is not the family's.","type":"string"},"accept":{"description":"What is acceptable; `record-only` where the value is only written down.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["balance"],"unevaluatedProperties":false},"verb-adjust":{"description":"Set an adjustment.","type":"object","x-own":true,"x-verb":"adjust","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"adjust":{"description":"Parts to adjust.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"until":{"description":"What must be reached.","$ref":"common.schema.json#/$defs/prose"},"accept":{"description":"What is acceptable; `record-only` where the value is only written down.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"back-off":{"description":"How far it is turned back then.","type":"string"},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["adjust"],"unevaluatedProperties":false},"verb-check":{"description":"Check something.","type":"object","x-own":true,"x-verb":"check","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"check":{"description":"A check of the family by id, or what must be found true.","$ref":"common.schema.json#/$defs/prose","x-ref":"check","x-ref-or-prose":true},"accept":{"description":"What is acceptable; `record-only` where the value is only written down.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["check"],"unevaluatedProperties":false},"verb-wait":{"description":"Wait.","type":"object","x-own":true,"x-verb":"wait","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"wait":{"description":"How long, or `cure`.","type":"string","x-quantity":"time"},"of":{"description":"The consumable that cures meanwhile.","type":["string","array"],"x-ref":"consumable","items":{"type":"string"},"minItems":1}},"required":["wait"],"unevaluatedProperties":false},"verb-send":{"description":"Send a part out.","type":"object","x-own":true,"x-verb":"send","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"send":{"description":"Parts to send.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"to":{"description":"Where to, and what for.","$ref":"common.schema.json#/$defs/prose"},"certificate":{"description":"The certificate that must come back.","$ref":"common.schema.json#/$defs/prose"}},"required":["send"],"unevaluatedProperties":false},"verb-receive":{"description":"Take a part in.","type":"object","x-own":true,"x-verb":"receive","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"receive":{"description":"Parts taken in.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"certificate":{"description":"The certificate that comes with it.","$ref":"common.schema.json#/$defs/prose"}},"required":["receive"],"unevaluatedProperties":false},"verb-return":{"description":"Give a part back to its owner.","type":"object","x-own":true,"x-verb":"return","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"return":{"description":"Parts given back.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"to":{"description":"To whom.","$ref":"common.schema.json#/$defs/prose"}},"required":["return"],"unevaluatedProperties":false},"verb-discard":{"description":"Scrap a part.","type":"object","x-own":true,"x-verb":"discard","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"discard":{"description":"Parts to scrap.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"to":{"description":"Where to.","$ref":"common.schema.json#/$defs/prose"}},"required":["discard"],"unevaluatedProperties":false},"verb-record":{"description":"Write something down.","type":"object","x-own":true,"x-verb":"record","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"record":{"description":"What is written down.","$ref":"common.schema.json#/$defs/prose"},"serial":{"description":"Parts whose serial number is written down.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1}},"required":["record"],"unevaluatedProperties":false},"concession":{"description":"A finding that is let stand.","type":"object","properties":{"rule":{"description":"Id of the rule.","type":"string","x-ref":"rule"},"at":{"description":"The step it is let stand at.","type":"string","x-ref":"step"},"about":{"description":"The ids that the finding is about, where the step has several.","type":["string","array"],"items":{"type":"string"}},"because":{"description":"Why it may stand.","$ref":"common.schema.json#/$defs/prose"},"by":{"description":"Who allows it.","type":"string"},"until":{"description":"Last day on which it holds.","type":"string","pattern":"^\\d{4}-\\d{2}-\\d{2}$","x-date":true}},"required":["rule","because","by","until"],"additionalProperties":false,"x-own":true},"reading":{"description":"A value that is read on the bench and used later.","type":"object","properties":{"name":{"description":"What is read, as the sheet prints it.","$ref":"common.schema.json#/$defs/prose"},"quantity":{"description":"The dimension of the value.","type":"string","enum":["torque","force","length","angle","temperature","pressure","mass","unbalance","time","rotational-speed","voltage","current","resistance","flow","ratio"]},"accept":{"description":"What is acceptable.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true},"figure":{"description":"A figure.","type":"object","properties":{"file":{"description":"Path of the SVG file, relative to this document.","type":"string","x-path":"figure"},"alt":{"description":"What the figure shows, in words, for whoever cannot see it.","$ref":"common.schema.json#/$defs/prose"},"caption":{"description":"The line printed below the figure.","$ref":"common.schema.json#/$defs/prose"}},"required":["file"],"additionalProperties":false,"x-own":true}}};

function validate127(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate127.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema21.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.text === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "text"},message:"must have required property '"+"text"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "text") || (key0 === "en")) || (key0 === "de")) || (key0 === "es"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.text !== undefined){
if(typeof data.text !== "string"){
const err3 = {instancePath:instancePath+"/text",schemaPath:"#/properties/text/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.en !== undefined){
if(typeof data.en !== "string"){
const err4 = {instancePath:instancePath+"/en",schemaPath:"#/properties/en/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.de !== undefined){
if(typeof data.de !== "string"){
const err5 = {instancePath:instancePath+"/de",schemaPath:"#/properties/de/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.es !== undefined){
if(typeof data.es !== "string"){
const err6 = {instancePath:instancePath+"/es",schemaPath:"#/properties/es/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
validate127.errors = vErrors;
return errors === 0;
}
validate127.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate129(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate129.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((!data || typeof data != "object") && (typeof data !== "string")){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema31.type},message:"must be string,object,array"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Array.isArray(data)){
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(!(validate91(data[i0], {instancePath:instancePath+"/" + i0,parentData:data,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.text === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "text"},message:"must have required property '"+"text"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "text") || (key0 === "en")) || (key0 === "de")) || (key0 === "es"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.text !== undefined){
if(typeof data.text !== "string"){
const err3 = {instancePath:instancePath+"/text",schemaPath:"#/properties/text/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.en !== undefined){
if(typeof data.en !== "string"){
const err4 = {instancePath:instancePath+"/en",schemaPath:"#/properties/en/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.de !== undefined){
if(typeof data.de !== "string"){
const err5 = {instancePath:instancePath+"/de",schemaPath:"#/properties/de/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.es !== undefined){
if(typeof data.es !== "string"){
const err6 = {instancePath:instancePath+"/es",schemaPath:"#/properties/es/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
validate129.errors = vErrors;
return errors === 0;
}
validate129.evaluated = {"props":true,"items":true,"dynamicProps":false,"dynamicItems":false};


function validate126(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate126.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.witnessmark === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "witnessmark"},message:"must have required property '"+"witnessmark"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.procedure === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "procedure"},message:"must have required property '"+"procedure"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.title === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "title"},message:"must have required property '"+"title"+"'"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data.revision === undefined){
const err3 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "revision"},message:"must have required property '"+"revision"+"'"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
if(data.family === undefined){
const err4 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "family"},message:"must have required property '"+"family"+"'"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(data.phases === undefined){
const err5 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "phases"},message:"must have required property '"+"phases"+"'"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema43.properties, key0))){
const err6 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.witnessmark !== undefined){
let data0 = data.witnessmark;
if(typeof data0 === "string"){
if(!pattern3.test(data0)){
const err7 = {instancePath:instancePath+"/witnessmark",schemaPath:"#/properties/witnessmark/pattern",keyword:"pattern",params:{pattern: "^1$"},message:"must match pattern \""+"^1$"+"\""};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
else {
const err8 = {instancePath:instancePath+"/witnessmark",schemaPath:"#/properties/witnessmark/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.procedure !== undefined){
if(typeof data.procedure !== "string"){
const err9 = {instancePath:instancePath+"/procedure",schemaPath:"#/properties/procedure/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data.title !== undefined){
if(!(validate127(data.title, {instancePath:instancePath+"/title",parentData:data,parentDataProperty:"title",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.revision !== undefined){
if(typeof data.revision !== "string"){
const err10 = {instancePath:instancePath+"/revision",schemaPath:"#/properties/revision/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.status !== undefined){
let data4 = data.status;
if(typeof data4 !== "string"){
const err11 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
if(!(((data4 === "draft") || (data4 === "released")) || (data4 === "withdrawn"))){
const err12 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema43.properties.status.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.family !== undefined){
if(typeof data.family !== "string"){
const err13 = {instancePath:instancePath+"/family",schemaPath:"#/properties/family/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data.kit !== undefined){
let data6 = data.kit;
if((typeof data6 !== "string") && (!(Array.isArray(data6)))){
const err14 = {instancePath:instancePath+"/kit",schemaPath:"#/properties/kit/type",keyword:"type",params:{type: schema43.properties.kit.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
if(Array.isArray(data6)){
const len0 = data6.length;
for(let i0=0; i0<len0; i0++){
if(typeof data6[i0] !== "string"){
const err15 = {instancePath:instancePath+"/kit/" + i0,schemaPath:"#/properties/kit/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
}
}
if(data.stores !== undefined){
let data8 = data.stores;
if((typeof data8 !== "string") && (!(Array.isArray(data8)))){
const err16 = {instancePath:instancePath+"/stores",schemaPath:"#/properties/stores/type",keyword:"type",params:{type: schema43.properties.stores.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
if(Array.isArray(data8)){
const len1 = data8.length;
for(let i1=0; i1<len1; i1++){
if(typeof data8[i1] !== "string"){
const err17 = {instancePath:instancePath+"/stores/" + i1,schemaPath:"#/properties/stores/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
}
}
if(data.covers !== undefined){
let data10 = data.covers;
if(data10 && typeof data10 == "object" && !Array.isArray(data10)){
for(const key1 in data10){
if(!((key1 === "variants") || (key1 === "options"))){
const err18 = {instancePath:instancePath+"/covers",schemaPath:"#/properties/covers/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key1},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
if(data10.variants !== undefined){
let data11 = data10.variants;
if((typeof data11 !== "string") && (!(Array.isArray(data11)))){
const err19 = {instancePath:instancePath+"/covers/variants",schemaPath:"#/properties/covers/properties/variants/type",keyword:"type",params:{type: schema43.properties.covers.properties.variants.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
if(Array.isArray(data11)){
if(data11.length < 1){
const err20 = {instancePath:instancePath+"/covers/variants",schemaPath:"#/properties/covers/properties/variants/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len2 = data11.length;
for(let i2=0; i2<len2; i2++){
if(typeof data11[i2] !== "string"){
const err21 = {instancePath:instancePath+"/covers/variants/" + i2,schemaPath:"#/properties/covers/properties/variants/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
}
}
if(data10.options !== undefined){
let data13 = data10.options;
if((typeof data13 !== "string") && (!(Array.isArray(data13)))){
const err22 = {instancePath:instancePath+"/covers/options",schemaPath:"#/properties/covers/properties/options/type",keyword:"type",params:{type: schema43.properties.covers.properties.options.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
if(Array.isArray(data13)){
const len3 = data13.length;
for(let i3=0; i3<len3; i3++){
if(typeof data13[i3] !== "string"){
const err23 = {instancePath:instancePath+"/covers/options/" + i3,schemaPath:"#/properties/covers/properties/options/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
}
}
}
else {
const err24 = {instancePath:instancePath+"/covers",schemaPath:"#/properties/covers/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
if(data.adds !== undefined){
let data15 = data.adds;
if((typeof data15 !== "string") && (!(Array.isArray(data15)))){
const err25 = {instancePath:instancePath+"/adds",schemaPath:"#/properties/adds/type",keyword:"type",params:{type: schema43.properties.adds.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
if(Array.isArray(data15)){
const len4 = data15.length;
for(let i4=0; i4<len4; i4++){
if(typeof data15[i4] !== "string"){
const err26 = {instancePath:instancePath+"/adds/" + i4,schemaPath:"#/properties/adds/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
}
}
if(data.starts !== undefined){
if(typeof data.starts !== "string"){
const err27 = {instancePath:instancePath+"/starts",schemaPath:"#/properties/starts/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data.ends !== undefined){
if(typeof data.ends !== "string"){
const err28 = {instancePath:instancePath+"/ends",schemaPath:"#/properties/ends/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
}
if(data["prepared-by"] !== undefined){
if(typeof data["prepared-by"] !== "string"){
const err29 = {instancePath:instancePath+"/prepared-by",schemaPath:"#/properties/prepared-by/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data["checked-by"] !== undefined){
if(typeof data["checked-by"] !== "string"){
const err30 = {instancePath:instancePath+"/checked-by",schemaPath:"#/properties/checked-by/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
}
if(data["approved-by"] !== undefined){
if(typeof data["approved-by"] !== "string"){
const err31 = {instancePath:instancePath+"/approved-by",schemaPath:"#/properties/approved-by/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
if(data.revisions !== undefined){
if(!(Array.isArray(data.revisions))){
const err32 = {instancePath:instancePath+"/revisions",schemaPath:"#/properties/revisions/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
}
if(data.tools !== undefined){
let data23 = data.tools;
if((typeof data23 !== "string") && (!(Array.isArray(data23)))){
const err33 = {instancePath:instancePath+"/tools",schemaPath:"#/properties/tools/type",keyword:"type",params:{type: schema43.properties.tools.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
if(Array.isArray(data23)){
const len5 = data23.length;
for(let i5=0; i5<len5; i5++){
if(typeof data23[i5] !== "string"){
const err34 = {instancePath:instancePath+"/tools/" + i5,schemaPath:"#/properties/tools/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
}
}
}
if(data.consumables !== undefined){
let data25 = data.consumables;
if((typeof data25 !== "string") && (!(Array.isArray(data25)))){
const err35 = {instancePath:instancePath+"/consumables",schemaPath:"#/properties/consumables/type",keyword:"type",params:{type: schema43.properties.consumables.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
if(Array.isArray(data25)){
const len6 = data25.length;
for(let i6=0; i6<len6; i6++){
if(typeof data25[i6] !== "string"){
const err36 = {instancePath:instancePath+"/consumables/" + i6,schemaPath:"#/properties/consumables/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
}
}
}
if(data["protective-equipment"] !== undefined){
if(!(validate129(data["protective-equipment"], {instancePath:instancePath+"/protective-equipment",parentData:data,parentDataProperty:"protective-equipment",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.readings !== undefined){
let data28 = data.readings;
if(data28 && typeof data28 == "object" && !Array.isArray(data28)){
}
else {
const err37 = {instancePath:instancePath+"/readings",schemaPath:"#/properties/readings/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
if(data.figures !== undefined){
let data29 = data.figures;
if(data29 && typeof data29 == "object" && !Array.isArray(data29)){
}
else {
const err38 = {instancePath:instancePath+"/figures",schemaPath:"#/properties/figures/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
}
if(data["before-you-start"] !== undefined){
if(!(Array.isArray(data["before-you-start"]))){
const err39 = {instancePath:instancePath+"/before-you-start",schemaPath:"#/properties/before-you-start/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
if(data.phases !== undefined){
if(!(Array.isArray(data.phases))){
const err40 = {instancePath:instancePath+"/phases",schemaPath:"#/properties/phases/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
}
if(data.concessions !== undefined){
if(!(Array.isArray(data.concessions))){
const err41 = {instancePath:instancePath+"/concessions",schemaPath:"#/properties/concessions/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
}
if(data["at-installation"] !== undefined){
if(!(validate129(data["at-installation"], {instancePath:instancePath+"/at-installation",parentData:data,parentDataProperty:"at-installation",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.note !== undefined){
if(!(validate127(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
}
else {
const err42 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err42];
}
else {
vErrors.push(err42);
}
errors++;
}
validate126.errors = vErrors;
return errors === 0;
}
validate126.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_revision = validate134;
const schema46 = {"description":"A revision of the procedure.","type":"object","properties":{"revision":{"description":"The revision.","type":"string"},"date":{"description":"Day of the revision.","type":"string","pattern":"^\\d{4}-\\d{2}-\\d{2}$","x-date":true},"what":{"description":"What changed.","$ref":"common.schema.json#/$defs/prose"},"by":{"description":"Who changed it.","type":"string"}},"required":["revision","what"],"additionalProperties":false,"x-own":true};

function validate134(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate134.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.revision === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "revision"},message:"must have required property '"+"revision"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.what === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "what"},message:"must have required property '"+"what"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "revision") || (key0 === "date")) || (key0 === "what")) || (key0 === "by"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.revision !== undefined){
if(typeof data.revision !== "string"){
const err3 = {instancePath:instancePath+"/revision",schemaPath:"#/properties/revision/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.date !== undefined){
let data1 = data.date;
if(typeof data1 === "string"){
if(!pattern18.test(data1)){
const err4 = {instancePath:instancePath+"/date",schemaPath:"#/properties/date/pattern",keyword:"pattern",params:{pattern: "^\\d{4}-\\d{2}-\\d{2}$"},message:"must match pattern \""+"^\\d{4}-\\d{2}-\\d{2}$"+"\""};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/date",schemaPath:"#/properties/date/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.what !== undefined){
if(!(validate127(data.what, {instancePath:instancePath+"/what",parentData:data,parentDataProperty:"what",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.by !== undefined){
if(typeof data.by !== "string"){
const err6 = {instancePath:instancePath+"/by",schemaPath:"#/properties/by/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate134.errors = vErrors;
return errors === 0;
}
validate134.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_notice_line = validate136;
const schema47 = {"description":"A text, or a warning, caution or notice.","type":["string","object"],"x-shorthand":"say","x-own":true,"properties":{"say":{"description":"A plain text.","$ref":"common.schema.json#/$defs/prose"},"warning":{"description":"What could kill or seriously injure if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"caution":{"description":"What could injure slightly or moderately if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"notice":{"description":"What could damage parts or equipment; not about injury. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"figure":{"description":"A figure that shows it.","type":"string","x-ref":"figure"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"additionalProperties":false};

function validate141(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate141.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((!data || typeof data != "object") && (typeof data !== "string")){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema25.type},message:"must be string,array,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Array.isArray(data)){
if(data.length < 1){
const err1 = {instancePath,schemaPath:"#/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(!(validate65(data[i0], {instancePath:instancePath+"/" + i0,parentData:data,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(Object.keys(data).length < 1){
const err2 = {instancePath,schemaPath:"#/minProperties",keyword:"minProperties",params:{limit: 1},message:"must NOT have fewer than 1 properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(((key0 === "all") || (key0 === "any")) || (key0 === "none"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.all !== undefined){
if(!(validate65(data.all, {instancePath:instancePath+"/all",parentData:data,parentDataProperty:"all",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data.any !== undefined){
if(!(validate65(data.any, {instancePath:instancePath+"/any",parentData:data,parentDataProperty:"any",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
if(data.none !== undefined){
if(!(validate65(data.none, {instancePath:instancePath+"/none",parentData:data,parentDataProperty:"none",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
errors = vErrors.length;
}
}
}
validate141.errors = vErrors;
return errors === 0;
}
validate141.evaluated = {"props":true,"items":true,"dynamicProps":false,"dynamicItems":false};


function validate136(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate136.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema47.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((((((((key0 === "say") || (key0 === "warning")) || (key0 === "caution")) || (key0 === "notice")) || (key0 === "figure")) || (key0 === "when")) || (key0 === "unless")) || (key0 === "note"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.say !== undefined){
if(!(validate127(data.say, {instancePath:instancePath+"/say",parentData:data,parentDataProperty:"say",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.warning !== undefined){
if(!(validate129(data.warning, {instancePath:instancePath+"/warning",parentData:data,parentDataProperty:"warning",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.caution !== undefined){
if(!(validate129(data.caution, {instancePath:instancePath+"/caution",parentData:data,parentDataProperty:"caution",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.notice !== undefined){
if(!(validate129(data.notice, {instancePath:instancePath+"/notice",parentData:data,parentDataProperty:"notice",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.figure !== undefined){
if(typeof data.figure !== "string"){
const err2 = {instancePath:instancePath+"/figure",schemaPath:"#/properties/figure/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.when !== undefined){
if(!(validate141(data.when, {instancePath:instancePath+"/when",parentData:data,parentDataProperty:"when",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.unless !== undefined){
if(!(validate141(data.unless, {instancePath:instancePath+"/unless",parentData:data,parentDataProperty:"unless",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.note !== undefined){
if(!(validate127(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
}
validate136.errors = vErrors;
return errors === 0;
}
validate136.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_phase = validate149;
const schema49 = {"description":"A phase of the work.","type":"object","properties":{"phase":{"description":"Name of the phase.","$ref":"common.schema.json#/$defs/prose"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"warning":{"description":"What could kill or seriously injure if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"caution":{"description":"What could injure slightly or moderately if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"notice":{"description":"What could damage parts or equipment; not about injury. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"},"steps":{"description":"The steps in their order.","type":"array","items":{}}},"required":["phase","steps"],"additionalProperties":false,"x-own":true};

function validate149(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate149.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.phase === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "phase"},message:"must have required property '"+"phase"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.steps === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "steps"},message:"must have required property '"+"steps"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((((((key0 === "phase") || (key0 === "when")) || (key0 === "unless")) || (key0 === "warning")) || (key0 === "caution")) || (key0 === "notice")) || (key0 === "note")) || (key0 === "steps"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.phase !== undefined){
if(!(validate127(data.phase, {instancePath:instancePath+"/phase",parentData:data,parentDataProperty:"phase",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.when !== undefined){
if(!(validate141(data.when, {instancePath:instancePath+"/when",parentData:data,parentDataProperty:"when",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.unless !== undefined){
if(!(validate141(data.unless, {instancePath:instancePath+"/unless",parentData:data,parentDataProperty:"unless",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.warning !== undefined){
if(!(validate129(data.warning, {instancePath:instancePath+"/warning",parentData:data,parentDataProperty:"warning",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.caution !== undefined){
if(!(validate129(data.caution, {instancePath:instancePath+"/caution",parentData:data,parentDataProperty:"caution",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.notice !== undefined){
if(!(validate129(data.notice, {instancePath:instancePath+"/notice",parentData:data,parentDataProperty:"notice",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.note !== undefined){
if(!(validate127(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.steps !== undefined){
if(!(Array.isArray(data.steps))){
const err3 = {instancePath:instancePath+"/steps",schemaPath:"#/properties/steps/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate149.errors = vErrors;
return errors === 0;
}
validate149.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_step = validate157;
const schema50 = {"description":"A step.","type":"object","properties":{"step":{"description":"Id of the step.","type":"string","x-declares":"step"},"title":{"description":"What is done, in a few words.","$ref":"common.schema.json#/$defs/prose"},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"sign":{"description":"Who must sign before the work goes on.","type":"string","enum":["fitter","inspector","supervisor","customer"]},"people":{"description":"How many people it takes.","type":"string","pattern":"^[1-9]\\d*$"},"optional":{"description":"The step may be left out.","type":"string","pattern":"^(true|false)$"},"figure":{"description":"A figure that shows it.","type":["string","array"],"x-ref":"figure","items":{"type":"string"},"minItems":1},"warning":{"description":"What could kill or seriously injure if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"caution":{"description":"What could injure slightly or moderately if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"notice":{"description":"What could damage parts or equipment; not about injury. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"},"do":{"description":"The instructions in their order.","type":"array","items":{}}},"required":["step","title","do"],"additionalProperties":false,"x-own":true};

function validate157(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate157.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.step === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "step"},message:"must have required property '"+"step"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.title === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "title"},message:"must have required property '"+"title"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.do === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "do"},message:"must have required property '"+"do"+"'"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema50.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.step !== undefined){
if(typeof data.step !== "string"){
const err4 = {instancePath:instancePath+"/step",schemaPath:"#/properties/step/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.title !== undefined){
if(!(validate127(data.title, {instancePath:instancePath+"/title",parentData:data,parentDataProperty:"title",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.when !== undefined){
if(!(validate141(data.when, {instancePath:instancePath+"/when",parentData:data,parentDataProperty:"when",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.unless !== undefined){
if(!(validate141(data.unless, {instancePath:instancePath+"/unless",parentData:data,parentDataProperty:"unless",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.sign !== undefined){
let data4 = data.sign;
if(typeof data4 !== "string"){
const err5 = {instancePath:instancePath+"/sign",schemaPath:"#/properties/sign/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(!((((data4 === "fitter") || (data4 === "inspector")) || (data4 === "supervisor")) || (data4 === "customer"))){
const err6 = {instancePath:instancePath+"/sign",schemaPath:"#/properties/sign/enum",keyword:"enum",params:{allowedValues: schema50.properties.sign.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.people !== undefined){
let data5 = data.people;
if(typeof data5 === "string"){
if(!pattern4.test(data5)){
const err7 = {instancePath:instancePath+"/people",schemaPath:"#/properties/people/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
else {
const err8 = {instancePath:instancePath+"/people",schemaPath:"#/properties/people/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.optional !== undefined){
let data6 = data.optional;
if(typeof data6 === "string"){
if(!pattern9.test(data6)){
const err9 = {instancePath:instancePath+"/optional",schemaPath:"#/properties/optional/pattern",keyword:"pattern",params:{pattern: "^(true|false)$"},message:"must match pattern \""+"^(true|false)$"+"\""};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
else {
const err10 = {instancePath:instancePath+"/optional",schemaPath:"#/properties/optional/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.figure !== undefined){
let data7 = data.figure;
if((typeof data7 !== "string") && (!(Array.isArray(data7)))){
const err11 = {instancePath:instancePath+"/figure",schemaPath:"#/properties/figure/type",keyword:"type",params:{type: schema50.properties.figure.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
if(Array.isArray(data7)){
if(data7.length < 1){
const err12 = {instancePath:instancePath+"/figure",schemaPath:"#/properties/figure/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
const len0 = data7.length;
for(let i0=0; i0<len0; i0++){
if(typeof data7[i0] !== "string"){
const err13 = {instancePath:instancePath+"/figure/" + i0,schemaPath:"#/properties/figure/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
}
}
if(data.warning !== undefined){
if(!(validate129(data.warning, {instancePath:instancePath+"/warning",parentData:data,parentDataProperty:"warning",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.caution !== undefined){
if(!(validate129(data.caution, {instancePath:instancePath+"/caution",parentData:data,parentDataProperty:"caution",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.notice !== undefined){
if(!(validate129(data.notice, {instancePath:instancePath+"/notice",parentData:data,parentDataProperty:"notice",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.note !== undefined){
if(!(validate127(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.do !== undefined){
if(!(Array.isArray(data.do))){
const err14 = {instancePath:instancePath+"/do",schemaPath:"#/properties/do/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
}
else {
const err15 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
validate157.errors = vErrors;
return errors === 0;
}
validate157.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_sentence = validate165;
const schema51 = {"description":"An instruction in words alone.","type":"object","x-own":true,"x-verb":"say","x-shorthand":"say","allOf":[{"$ref":"#/$defs/instruction-keys"}],"required":["say"],"unevaluatedProperties":false};
const schema52 = {"description":"Keys that every instruction may have.","type":"object","x-order":["to","across","when","unless","…","with","using","hold","accept","look-for","places","say","warning","caution","notice","figure","if-not","note"],"properties":{"with":{"description":"Tools it is done with.","type":["string","array","object"],"x-ref":"tool","x-shorthand":"tool","items":{"$ref":"#/$defs/tool-use"},"properties":{"tool":{"description":"The tool.","type":"string","x-ref":"tool"},"count":{"description":"How many of it.","type":"string","pattern":"^[1-9]\\d*$"}},"required":["tool"],"additionalProperties":false},"using":{"description":"Consumables it is done with.","type":["string","array"],"x-ref":"consumable","items":{"type":"string"},"minItems":1},"say":{"description":"Own wording, printed instead of the written sentence.","$ref":"common.schema.json#/$defs/prose"},"warning":{"description":"What could kill or seriously injure if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"caution":{"description":"What could injure slightly or moderately if it is not avoided. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"notice":{"description":"What could damage parts or equipment; not about injury. Printed before the act.","$ref":"common.schema.json#/$defs/prose-list"},"figure":{"description":"A figure that shows it.","type":["string","array"],"x-ref":"figure","items":{"type":"string"},"minItems":1},"when":{"description":"Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none.","$ref":"common.schema.json#/$defs/condition"},"unless":{"description":"Does not hold on the builds and outcomes that meet this condition.","$ref":"common.schema.json#/$defs/condition"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}}};
const schema53 = {"description":"A tool, or a tool and how many of it.","type":["string","object"],"properties":{"tool":{"description":"The tool.","type":"string","x-ref":"tool"},"count":{"description":"How many of it.","type":"string","pattern":"^[1-9]\\d*$"}},"required":["tool"],"additionalProperties":false};

function validate167(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate167.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema53.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.tool === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "tool"},message:"must have required property '"+"tool"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((key0 === "tool") || (key0 === "count"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.tool !== undefined){
if(typeof data.tool !== "string"){
const err3 = {instancePath:instancePath+"/tool",schemaPath:"#/properties/tool/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.count !== undefined){
let data1 = data.count;
if(typeof data1 === "string"){
if(!pattern4.test(data1)){
const err4 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
validate167.errors = vErrors;
return errors === 0;
}
validate167.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate166(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate166.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.with !== undefined){
let data0 = data.with;
if((!data0 || typeof data0 != "object") && (typeof data0 !== "string")){
const err0 = {instancePath:instancePath+"/with",schemaPath:"#/properties/with/type",keyword:"type",params:{type: schema52.properties.with.type},message:"must be string,array,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Array.isArray(data0)){
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(!(validate167(data0[i0], {instancePath:instancePath+"/with/" + i0,parentData:data0,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate167.errors : vErrors.concat(validate167.errors);
errors = vErrors.length;
}
}
}
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
if(data0.tool === undefined){
const err1 = {instancePath:instancePath+"/with",schemaPath:"#/properties/with/required",keyword:"required",params:{missingProperty: "tool"},message:"must have required property '"+"tool"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data0){
if(!((key0 === "tool") || (key0 === "count"))){
const err2 = {instancePath:instancePath+"/with",schemaPath:"#/properties/with/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data0.tool !== undefined){
if(typeof data0.tool !== "string"){
const err3 = {instancePath:instancePath+"/with/tool",schemaPath:"#/properties/with/properties/tool/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data0.count !== undefined){
let data3 = data0.count;
if(typeof data3 === "string"){
if(!pattern4.test(data3)){
const err4 = {instancePath:instancePath+"/with/count",schemaPath:"#/properties/with/properties/count/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/with/count",schemaPath:"#/properties/with/properties/count/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
}
if(data.using !== undefined){
let data4 = data.using;
if((typeof data4 !== "string") && (!(Array.isArray(data4)))){
const err6 = {instancePath:instancePath+"/using",schemaPath:"#/properties/using/type",keyword:"type",params:{type: schema52.properties.using.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
if(Array.isArray(data4)){
if(data4.length < 1){
const err7 = {instancePath:instancePath+"/using",schemaPath:"#/properties/using/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len1 = data4.length;
for(let i1=0; i1<len1; i1++){
if(typeof data4[i1] !== "string"){
const err8 = {instancePath:instancePath+"/using/" + i1,schemaPath:"#/properties/using/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
}
}
if(data.say !== undefined){
if(!(validate127(data.say, {instancePath:instancePath+"/say",parentData:data,parentDataProperty:"say",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.warning !== undefined){
if(!(validate129(data.warning, {instancePath:instancePath+"/warning",parentData:data,parentDataProperty:"warning",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.caution !== undefined){
if(!(validate129(data.caution, {instancePath:instancePath+"/caution",parentData:data,parentDataProperty:"caution",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.notice !== undefined){
if(!(validate129(data.notice, {instancePath:instancePath+"/notice",parentData:data,parentDataProperty:"notice",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data.figure !== undefined){
let data10 = data.figure;
if((typeof data10 !== "string") && (!(Array.isArray(data10)))){
const err9 = {instancePath:instancePath+"/figure",schemaPath:"#/properties/figure/type",keyword:"type",params:{type: schema52.properties.figure.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
if(Array.isArray(data10)){
if(data10.length < 1){
const err10 = {instancePath:instancePath+"/figure",schemaPath:"#/properties/figure/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
const len2 = data10.length;
for(let i2=0; i2<len2; i2++){
if(typeof data10[i2] !== "string"){
const err11 = {instancePath:instancePath+"/figure/" + i2,schemaPath:"#/properties/figure/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
}
}
if(data.when !== undefined){
if(!(validate141(data.when, {instancePath:instancePath+"/when",parentData:data,parentDataProperty:"when",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.unless !== undefined){
if(!(validate141(data.unless, {instancePath:instancePath+"/unless",parentData:data,parentDataProperty:"unless",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.note !== undefined){
if(!(validate127(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
}
else {
const err12 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
validate166.errors = vErrors;
return errors === 0;
}
validate166.evaluated = {"props":{"with":true,"using":true,"say":true,"warning":true,"caution":true,"notice":true,"figure":true,"when":true,"unless":true,"note":true},"dynamicProps":false,"dynamicItems":false};


function validate165(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate165.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.say === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "say"},message:"must have required property '"+"say"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if((((((((((key0 !== "with") && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err1 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
}
else {
const err2 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
validate165.errors = vErrors;
return errors === 0;
}
validate165.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_loosen = validate177;
const schema54 = {"description":"Loosen a fastener without taking it off.","type":"object","x-own":true,"x-verb":"loosen","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"loosen":{"description":"Fasteners to loosen.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"hold":{"description":"What is counter-held, and with what.","$ref":"#/$defs/hold"}},"required":["loosen"],"unevaluatedProperties":false};
const schema55 = {"description":"Where it is held, and with what.","type":["string","object"],"x-shorthand":"at","properties":{"at":{"description":"Where it is held.","$ref":"common.schema.json#/$defs/prose"},"with":{"description":"Tools it is done with.","type":["string","array","object"],"x-ref":"tool","x-shorthand":"tool","items":{"$ref":"#/$defs/tool-use"},"properties":{"tool":{"description":"The tool.","type":"string","x-ref":"tool"},"count":{"description":"How many of it.","type":"string","pattern":"^[1-9]\\d*$"}},"required":["tool"],"additionalProperties":false}},"required":["at"],"additionalProperties":false};

function validate179(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate179.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema55.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.at === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "at"},message:"must have required property '"+"at"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((key0 === "at") || (key0 === "with"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.at !== undefined){
if(!(validate127(data.at, {instancePath:instancePath+"/at",parentData:data,parentDataProperty:"at",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.with !== undefined){
let data1 = data.with;
if((!data1 || typeof data1 != "object") && (typeof data1 !== "string")){
const err3 = {instancePath:instancePath+"/with",schemaPath:"#/properties/with/type",keyword:"type",params:{type: schema55.properties.with.type},message:"must be string,array,object"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
if(Array.isArray(data1)){
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate167(data1[i0], {instancePath:instancePath+"/with/" + i0,parentData:data1,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate167.errors : vErrors.concat(validate167.errors);
errors = vErrors.length;
}
}
}
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.tool === undefined){
const err4 = {instancePath:instancePath+"/with",schemaPath:"#/properties/with/required",keyword:"required",params:{missingProperty: "tool"},message:"must have required property '"+"tool"+"'"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
for(const key1 in data1){
if(!((key1 === "tool") || (key1 === "count"))){
const err5 = {instancePath:instancePath+"/with",schemaPath:"#/properties/with/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key1},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data1.tool !== undefined){
if(typeof data1.tool !== "string"){
const err6 = {instancePath:instancePath+"/with/tool",schemaPath:"#/properties/with/properties/tool/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data1.count !== undefined){
let data4 = data1.count;
if(typeof data4 === "string"){
if(!pattern4.test(data4)){
const err7 = {instancePath:instancePath+"/with/count",schemaPath:"#/properties/with/properties/count/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
else {
const err8 = {instancePath:instancePath+"/with/count",schemaPath:"#/properties/with/properties/count/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
}
}
}
validate179.errors = vErrors;
return errors === 0;
}
validate179.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate177(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate177.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.loosen === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "loosen"},message:"must have required property '"+"loosen"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.loosen !== undefined){
let data0 = data.loosen;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/loosen",schemaPath:"#/properties/loosen/type",keyword:"type",params:{type: schema54.properties.loosen.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/loosen",schemaPath:"#/properties/loosen/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/loosen/" + i0,schemaPath:"#/properties/loosen/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.hold !== undefined){
if(!(validate179(data.hold, {instancePath:instancePath+"/hold",parentData:data,parentDataProperty:"hold",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate179.errors : vErrors.concat(validate179.errors);
errors = vErrors.length;
}
}
for(const key0 in data){
if((((((((((((key0 !== "loosen") && (key0 !== "hold")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err4 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate177.errors = vErrors;
return errors === 0;
}
validate177.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_remove = validate183;
const schema56 = {"description":"Take a part off.","type":"object","x-own":true,"x-verb":"remove","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"remove":{"description":"Parts to take off.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"hold":{"description":"What is counter-held, and with what.","$ref":"#/$defs/hold"},"count":{"description":"How many pieces, where not all.","type":"string","pattern":"^[1-9]\\d*$"}},"required":["remove"],"unevaluatedProperties":false};

function validate183(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate183.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.remove === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "remove"},message:"must have required property '"+"remove"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.remove !== undefined){
let data0 = data.remove;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/remove",schemaPath:"#/properties/remove/type",keyword:"type",params:{type: schema56.properties.remove.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/remove",schemaPath:"#/properties/remove/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/remove/" + i0,schemaPath:"#/properties/remove/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.hold !== undefined){
if(!(validate179(data.hold, {instancePath:instancePath+"/hold",parentData:data,parentDataProperty:"hold",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate179.errors : vErrors.concat(validate179.errors);
errors = vErrors.length;
}
}
if(data.count !== undefined){
let data3 = data.count;
if(typeof data3 === "string"){
if(!pattern4.test(data3)){
const err4 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
for(const key0 in data){
if(((((((((((((key0 !== "remove") && (key0 !== "hold")) && (key0 !== "count")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err6 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate183.errors = vErrors;
return errors === 0;
}
validate183.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_install = validate186;
const schema57 = {"description":"Fit a part.","type":"object","x-own":true,"x-verb":"install","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"install":{"description":"Parts to fit.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"count":{"description":"How many pieces, where not all.","type":"string","pattern":"^[1-9]\\d*$"},"place":{"description":"The part it is fitted to, where there are several.","type":"string","x-ref":"part"},"orient":{"description":"How it faces.","$ref":"common.schema.json#/$defs/prose"},"locate":{"description":"What it locates on.","$ref":"common.schema.json#/$defs/prose"},"trial":{"description":"A trial fit: it comes off again.","type":"string","pattern":"^(true|false)$"}},"required":["install"],"unevaluatedProperties":false};

function validate186(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate186.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.install === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "install"},message:"must have required property '"+"install"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.install !== undefined){
let data0 = data.install;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/install",schemaPath:"#/properties/install/type",keyword:"type",params:{type: schema57.properties.install.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/install",schemaPath:"#/properties/install/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/install/" + i0,schemaPath:"#/properties/install/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.count !== undefined){
let data2 = data.count;
if(typeof data2 === "string"){
if(!pattern4.test(data2)){
const err4 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.place !== undefined){
if(typeof data.place !== "string"){
const err6 = {instancePath:instancePath+"/place",schemaPath:"#/properties/place/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.orient !== undefined){
if(!(validate127(data.orient, {instancePath:instancePath+"/orient",parentData:data,parentDataProperty:"orient",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.locate !== undefined){
if(!(validate127(data.locate, {instancePath:instancePath+"/locate",parentData:data,parentDataProperty:"locate",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.trial !== undefined){
let data6 = data.trial;
if(typeof data6 === "string"){
if(!pattern9.test(data6)){
const err7 = {instancePath:instancePath+"/trial",schemaPath:"#/properties/trial/pattern",keyword:"pattern",params:{pattern: "^(true|false)$"},message:"must match pattern \""+"^(true|false)$"+"\""};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
else {
const err8 = {instancePath:instancePath+"/trial",schemaPath:"#/properties/trial/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
for(const key0 in data){
if((((((((((((((((key0 !== "install") && (key0 !== "count")) && (key0 !== "place")) && (key0 !== "orient")) && (key0 !== "locate")) && (key0 !== "trial")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err9 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
}
else {
const err10 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
validate186.errors = vErrors;
return errors === 0;
}
validate186.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_seat = validate190;
const schema58 = {"description":"Seat a ring that was only released.","type":"object","x-own":true,"x-verb":"seat","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"seat":{"description":"Rings to seat.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1}},"required":["seat"],"unevaluatedProperties":false};

function validate190(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate190.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.seat === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "seat"},message:"must have required property '"+"seat"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.seat !== undefined){
let data0 = data.seat;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/seat",schemaPath:"#/properties/seat/type",keyword:"type",params:{type: schema58.properties.seat.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/seat",schemaPath:"#/properties/seat/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/seat/" + i0,schemaPath:"#/properties/seat/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
for(const key0 in data){
if(((((((((((key0 !== "seat") && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err4 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate190.errors = vErrors;
return errors === 0;
}
validate190.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_tighten = validate192;
const schema59 = {"description":"Tighten a fastener.","type":"object","x-own":true,"x-verb":"tighten","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"tighten":{"description":"Fasteners to tighten.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"torque":{"description":"Torque with unit and tolerance.","type":["string","object"],"x-quantity":"torque","x-by-build":true,"additionalProperties":{"type":"string"}},"angle":{"description":"Angle turned after the torque.","type":["string","object"],"x-quantity":"angle","x-by-build":true,"additionalProperties":{"type":"string"}},"passes":{"description":"Torque of each pass; the last is the final one.","type":"array","x-quantity":"torque","items":{"type":"string"}},"in-order":{"description":"Order of the pieces.","type":["string","array"],"items":{"type":"string"}},"plus":{"description":"A reading that is added to the torque, such as the prevailing torque.","type":"string","x-ref":"reading"},"count":{"description":"How many pieces, where not all.","type":"string","pattern":"^[1-9]\\d*$"},"hold":{"description":"What is counter-held, and with what.","$ref":"#/$defs/hold"}},"required":["tighten"],"unevaluatedProperties":false};

function validate192(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate192.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.tighten === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "tighten"},message:"must have required property '"+"tighten"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.tighten !== undefined){
let data0 = data.tighten;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/tighten",schemaPath:"#/properties/tighten/type",keyword:"type",params:{type: schema59.properties.tighten.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/tighten",schemaPath:"#/properties/tighten/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/tighten/" + i0,schemaPath:"#/properties/tighten/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.torque !== undefined){
let data2 = data.torque;
if((typeof data2 !== "string") && (!(data2 && typeof data2 == "object" && !Array.isArray(data2)))){
const err4 = {instancePath:instancePath+"/torque",schemaPath:"#/properties/torque/type",keyword:"type",params:{type: schema59.properties.torque.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
for(const key0 in data2){
if(typeof data2[key0] !== "string"){
const err5 = {instancePath:instancePath+"/torque/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/torque/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
}
if(data.angle !== undefined){
let data4 = data.angle;
if((typeof data4 !== "string") && (!(data4 && typeof data4 == "object" && !Array.isArray(data4)))){
const err6 = {instancePath:instancePath+"/angle",schemaPath:"#/properties/angle/type",keyword:"type",params:{type: schema59.properties.angle.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
if(data4 && typeof data4 == "object" && !Array.isArray(data4)){
for(const key1 in data4){
if(typeof data4[key1] !== "string"){
const err7 = {instancePath:instancePath+"/angle/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/angle/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
}
}
if(data.passes !== undefined){
let data6 = data.passes;
if(Array.isArray(data6)){
const len1 = data6.length;
for(let i1=0; i1<len1; i1++){
if(typeof data6[i1] !== "string"){
const err8 = {instancePath:instancePath+"/passes/" + i1,schemaPath:"#/properties/passes/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
}
else {
const err9 = {instancePath:instancePath+"/passes",schemaPath:"#/properties/passes/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data["in-order"] !== undefined){
let data8 = data["in-order"];
if((typeof data8 !== "string") && (!(Array.isArray(data8)))){
const err10 = {instancePath:instancePath+"/in-order",schemaPath:"#/properties/in-order/type",keyword:"type",params:{type: schema59.properties["in-order"].type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
if(Array.isArray(data8)){
const len2 = data8.length;
for(let i2=0; i2<len2; i2++){
if(typeof data8[i2] !== "string"){
const err11 = {instancePath:instancePath+"/in-order/" + i2,schemaPath:"#/properties/in-order/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
}
}
if(data.plus !== undefined){
if(typeof data.plus !== "string"){
const err12 = {instancePath:instancePath+"/plus",schemaPath:"#/properties/plus/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.count !== undefined){
let data11 = data.count;
if(typeof data11 === "string"){
if(!pattern4.test(data11)){
const err13 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
else {
const err14 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.hold !== undefined){
if(!(validate179(data.hold, {instancePath:instancePath+"/hold",parentData:data,parentDataProperty:"hold",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate179.errors : vErrors.concat(validate179.errors);
errors = vErrors.length;
}
}
for(const key2 in data){
if((((((((((((((((((key2 !== "tighten") && (key2 !== "torque")) && (key2 !== "angle")) && (key2 !== "passes")) && (key2 !== "in-order")) && (key2 !== "plus")) && (key2 !== "count")) && (key2 !== "hold")) && (key2 !== "with")) && (key2 !== "using")) && (key2 !== "say")) && (key2 !== "warning")) && (key2 !== "caution")) && (key2 !== "notice")) && (key2 !== "figure")) && (key2 !== "when")) && (key2 !== "unless")) && (key2 !== "note")){
const err15 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key2},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
}
else {
const err16 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
validate192.errors = vErrors;
return errors === 0;
}
validate192.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_apply = validate195;
const schema60 = {"description":"Put a consumable on.","type":"object","x-own":true,"x-verb":"apply","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"apply":{"description":"What is applied.","type":["string","array"],"x-ref":"consumable","items":{"type":"string"},"minItems":1},"to":{"description":"Parts it is applied to.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"at":{"description":"Where on the part: thread, face, bore.","$ref":"common.schema.json#/$defs/prose"},"amount":{"description":"How much of it.","$ref":"common.schema.json#/$defs/prose"}},"required":["apply"],"unevaluatedProperties":false};

function validate195(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate195.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.apply === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "apply"},message:"must have required property '"+"apply"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.apply !== undefined){
let data0 = data.apply;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/apply",schemaPath:"#/properties/apply/type",keyword:"type",params:{type: schema60.properties.apply.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/apply",schemaPath:"#/properties/apply/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/apply/" + i0,schemaPath:"#/properties/apply/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.to !== undefined){
let data2 = data.to;
if((typeof data2 !== "string") && (!(Array.isArray(data2)))){
const err4 = {instancePath:instancePath+"/to",schemaPath:"#/properties/to/type",keyword:"type",params:{type: schema60.properties.to.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(Array.isArray(data2)){
if(data2.length < 1){
const err5 = {instancePath:instancePath+"/to",schemaPath:"#/properties/to/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len1 = data2.length;
for(let i1=0; i1<len1; i1++){
if(typeof data2[i1] !== "string"){
const err6 = {instancePath:instancePath+"/to/" + i1,schemaPath:"#/properties/to/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
}
if(data.at !== undefined){
if(!(validate127(data.at, {instancePath:instancePath+"/at",parentData:data,parentDataProperty:"at",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.amount !== undefined){
if(!(validate127(data.amount, {instancePath:instancePath+"/amount",parentData:data,parentDataProperty:"amount",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
for(const key0 in data){
if((((((((((((((key0 !== "apply") && (key0 !== "to")) && (key0 !== "at")) && (key0 !== "amount")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err7 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate195.errors = vErrors;
return errors === 0;
}
validate195.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_clean = validate199;
const schema61 = {"description":"Clean a part.","type":"object","x-own":true,"x-verb":"clean","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"clean":{"description":"Parts to clean.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"at":{"description":"Where on the part, where not all of it: thread, bore, groove.","$ref":"common.schema.json#/$defs/prose"},"by":{"description":"How it is cleaned.","type":"string","enum":["wash","ultrasonic","brush","wire-brush","wipe","blast","caustic","solvent","steam","compressed-air"]}},"required":["clean"],"unevaluatedProperties":false};

function validate199(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate199.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.clean === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "clean"},message:"must have required property '"+"clean"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.clean !== undefined){
let data0 = data.clean;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/clean",schemaPath:"#/properties/clean/type",keyword:"type",params:{type: schema61.properties.clean.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/clean",schemaPath:"#/properties/clean/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/clean/" + i0,schemaPath:"#/properties/clean/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.at !== undefined){
if(!(validate127(data.at, {instancePath:instancePath+"/at",parentData:data,parentDataProperty:"at",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.by !== undefined){
let data3 = data.by;
if(typeof data3 !== "string"){
const err4 = {instancePath:instancePath+"/by",schemaPath:"#/properties/by/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(!((((((((((data3 === "wash") || (data3 === "ultrasonic")) || (data3 === "brush")) || (data3 === "wire-brush")) || (data3 === "wipe")) || (data3 === "blast")) || (data3 === "caustic")) || (data3 === "solvent")) || (data3 === "steam")) || (data3 === "compressed-air"))){
const err5 = {instancePath:instancePath+"/by",schemaPath:"#/properties/by/enum",keyword:"enum",params:{allowedValues: schema61.properties.by.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
for(const key0 in data){
if(((((((((((((key0 !== "clean") && (key0 !== "at")) && (key0 !== "by")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err6 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate199.errors = vErrors;
return errors === 0;
}
validate199.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_identify = validate202;
const schema62 = {"description":"Find out what only the bench can tell.","type":"object","x-own":true,"x-verb":"identify","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"identify":{"description":"What is found out.","type":"string","x-ref":"outcome"}},"required":["identify"],"unevaluatedProperties":false};

function validate202(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate202.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.identify === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "identify"},message:"must have required property '"+"identify"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.identify !== undefined){
if(typeof data.identify !== "string"){
const err1 = {instancePath:instancePath+"/identify",schemaPath:"#/properties/identify/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
for(const key0 in data){
if(((((((((((key0 !== "identify") && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err2 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate202.errors = vErrors;
return errors === 0;
}
validate202.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_inspect = validate204;
const schema63 = {"description":"Look a part over.","type":"object","x-own":true,"x-verb":"inspect","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"inspect":{"description":"Parts to inspect.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"look-for":{"description":"What to look for.","$ref":"common.schema.json#/$defs/prose-list"},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["inspect"],"unevaluatedProperties":false};
const schema64 = {"description":"What to do when it is not as it should be.","type":"object","properties":{"replace":{"description":"Parts to renew.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"reject":{"description":"The unit or part is rejected; stop and ask.","type":"string","pattern":"^(true|false)$"},"go-to":{"description":"An earlier step to go back to.","type":"string","x-ref":"step"},"at-most":{"description":"How many times.","type":"string","pattern":"^[1-9]\\d*$"},"then":{"description":"What to do when it is still not right.","$ref":"common.schema.json#/$defs/prose"},"do":{"description":"Further instructions.","type":"array","items":{}},"say":{"description":"What to do, in words.","$ref":"common.schema.json#/$defs/prose"},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":[],"additionalProperties":false};

function validate207(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate207.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((((((((key0 === "replace") || (key0 === "reject")) || (key0 === "go-to")) || (key0 === "at-most")) || (key0 === "then")) || (key0 === "do")) || (key0 === "say")) || (key0 === "note"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.replace !== undefined){
let data0 = data.replace;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/replace",schemaPath:"#/properties/replace/type",keyword:"type",params:{type: schema64.properties.replace.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/replace",schemaPath:"#/properties/replace/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/replace/" + i0,schemaPath:"#/properties/replace/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.reject !== undefined){
let data2 = data.reject;
if(typeof data2 === "string"){
if(!pattern9.test(data2)){
const err4 = {instancePath:instancePath+"/reject",schemaPath:"#/properties/reject/pattern",keyword:"pattern",params:{pattern: "^(true|false)$"},message:"must match pattern \""+"^(true|false)$"+"\""};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/reject",schemaPath:"#/properties/reject/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data["go-to"] !== undefined){
if(typeof data["go-to"] !== "string"){
const err6 = {instancePath:instancePath+"/go-to",schemaPath:"#/properties/go-to/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data["at-most"] !== undefined){
let data4 = data["at-most"];
if(typeof data4 === "string"){
if(!pattern4.test(data4)){
const err7 = {instancePath:instancePath+"/at-most",schemaPath:"#/properties/at-most/pattern",keyword:"pattern",params:{pattern: "^[1-9]\\d*$"},message:"must match pattern \""+"^[1-9]\\d*$"+"\""};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
else {
const err8 = {instancePath:instancePath+"/at-most",schemaPath:"#/properties/at-most/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.then !== undefined){
if(!(validate127(data.then, {instancePath:instancePath+"/then",parentData:data,parentDataProperty:"then",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.do !== undefined){
if(!(Array.isArray(data.do))){
const err9 = {instancePath:instancePath+"/do",schemaPath:"#/properties/do/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data.say !== undefined){
if(!(validate127(data.say, {instancePath:instancePath+"/say",parentData:data,parentDataProperty:"say",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.note !== undefined){
if(!(validate127(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
validate207.errors = vErrors;
return errors === 0;
}
validate207.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate204(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate204.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.inspect === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "inspect"},message:"must have required property '"+"inspect"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.inspect !== undefined){
let data0 = data.inspect;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/inspect",schemaPath:"#/properties/inspect/type",keyword:"type",params:{type: schema63.properties.inspect.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/inspect",schemaPath:"#/properties/inspect/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/inspect/" + i0,schemaPath:"#/properties/inspect/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data["look-for"] !== undefined){
if(!(validate129(data["look-for"], {instancePath:instancePath+"/look-for",parentData:data,parentDataProperty:"look-for",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data["if-not"] !== undefined){
if(!(validate207(data["if-not"], {instancePath:instancePath+"/if-not",parentData:data,parentDataProperty:"if-not",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate207.errors : vErrors.concat(validate207.errors);
errors = vErrors.length;
}
}
for(const key0 in data){
if(((((((((((((key0 !== "inspect") && (key0 !== "look-for")) && (key0 !== "if-not")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err4 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate204.errors = vErrors;
return errors === 0;
}
validate204.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_measure = validate212;
const schema65 = {"description":"Measure something against its limit.","type":"object","x-own":true,"x-verb":"measure","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"measure":{"description":"What is measured.","type":"string","x-ref":"limit-or-reading"},"accept":{"description":"What is acceptable; `record-only` where the value is only written down.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"places":{"description":"Where it is measured: a number of places or their names.","$ref":"common.schema.json#/$defs/prose-list"},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["measure"],"unevaluatedProperties":false};

function validate212(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate212.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.measure === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "measure"},message:"must have required property '"+"measure"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.measure !== undefined){
if(typeof data.measure !== "string"){
const err1 = {instancePath:instancePath+"/measure",schemaPath:"#/properties/measure/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.accept !== undefined){
let data1 = data.accept;
if((typeof data1 !== "string") && (!(data1 && typeof data1 == "object" && !Array.isArray(data1)))){
const err2 = {instancePath:instancePath+"/accept",schemaPath:"#/properties/accept/type",keyword:"type",params:{type: schema65.properties.accept.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
for(const key0 in data1){
if(typeof data1[key0] !== "string"){
const err3 = {instancePath:instancePath+"/accept/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/accept/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.places !== undefined){
if(!(validate129(data.places, {instancePath:instancePath+"/places",parentData:data,parentDataProperty:"places",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
errors = vErrors.length;
}
}
if(data["if-not"] !== undefined){
if(!(validate207(data["if-not"], {instancePath:instancePath+"/if-not",parentData:data,parentDataProperty:"if-not",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate207.errors : vErrors.concat(validate207.errors);
errors = vErrors.length;
}
}
for(const key1 in data){
if((((((((((((((key1 !== "measure") && (key1 !== "accept")) && (key1 !== "places")) && (key1 !== "if-not")) && (key1 !== "with")) && (key1 !== "using")) && (key1 !== "say")) && (key1 !== "warning")) && (key1 !== "caution")) && (key1 !== "notice")) && (key1 !== "figure")) && (key1 !== "when")) && (key1 !== "unless")) && (key1 !== "note")){
const err4 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key1},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate212.errors = vErrors;
return errors === 0;
}
validate212.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_calculate = validate216;
const schema66 = {"description":"Work a value out of readings.","type":"object","x-own":true,"x-verb":"calculate","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"calculate":{"description":"What is worked out.","type":"string","x-ref":"limit-or-reading"},"from":{"description":"Signed readings and quantities, for example [+bore-read, -journal-read].","type":["string","array"],"x-ref":"limit-or-reading","x-signed":true,"items":{"type":"string"}},"accept":{"description":"What is acceptable; `record-only` where the value is only written down.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["calculate"],"unevaluatedProperties":false};

function validate216(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate216.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.calculate === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "calculate"},message:"must have required property '"+"calculate"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.calculate !== undefined){
if(typeof data.calculate !== "string"){
const err1 = {instancePath:instancePath+"/calculate",schemaPath:"#/properties/calculate/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.from !== undefined){
let data1 = data.from;
if((typeof data1 !== "string") && (!(Array.isArray(data1)))){
const err2 = {instancePath:instancePath+"/from",schemaPath:"#/properties/from/type",keyword:"type",params:{type: schema66.properties.from.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(Array.isArray(data1)){
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err3 = {instancePath:instancePath+"/from/" + i0,schemaPath:"#/properties/from/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.accept !== undefined){
let data3 = data.accept;
if((typeof data3 !== "string") && (!(data3 && typeof data3 == "object" && !Array.isArray(data3)))){
const err4 = {instancePath:instancePath+"/accept",schemaPath:"#/properties/accept/type",keyword:"type",params:{type: schema66.properties.accept.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
for(const key0 in data3){
if(typeof data3[key0] !== "string"){
const err5 = {instancePath:instancePath+"/accept/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/accept/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
}
if(data["if-not"] !== undefined){
if(!(validate207(data["if-not"], {instancePath:instancePath+"/if-not",parentData:data,parentDataProperty:"if-not",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate207.errors : vErrors.concat(validate207.errors);
errors = vErrors.length;
}
}
for(const key1 in data){
if((((((((((((((key1 !== "calculate") && (key1 !== "from")) && (key1 !== "accept")) && (key1 !== "if-not")) && (key1 !== "with")) && (key1 !== "using")) && (key1 !== "say")) && (key1 !== "warning")) && (key1 !== "caution")) && (key1 !== "notice")) && (key1 !== "figure")) && (key1 !== "when")) && (key1 !== "unless")) && (key1 !== "note")){
const err6 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key1},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate216.errors = vErrors;
return errors === 0;
}
validate216.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_choose = validate219;
const schema67 = {"description":"Choose the size of a part.","type":"object","x-own":true,"x-verb":"choose","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"choose":{"description":"The part that comes in sizes.","type":"string","x-ref":"part"},"size":{"description":"Reading and signed quantities that give the size.","type":["string","array"],"x-ref":"limit-or-reading","x-signed":true,"items":{"type":"string"}}},"required":["choose"],"unevaluatedProperties":false};

function validate219(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate219.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.choose === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "choose"},message:"must have required property '"+"choose"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.choose !== undefined){
if(typeof data.choose !== "string"){
const err1 = {instancePath:instancePath+"/choose",schemaPath:"#/properties/choose/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.size !== undefined){
let data1 = data.size;
if((typeof data1 !== "string") && (!(Array.isArray(data1)))){
const err2 = {instancePath:instancePath+"/size",schemaPath:"#/properties/size/type",keyword:"type",params:{type: schema67.properties.size.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(Array.isArray(data1)){
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err3 = {instancePath:instancePath+"/size/" + i0,schemaPath:"#/properties/size/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
for(const key0 in data){
if((((((((((((key0 !== "choose") && (key0 !== "size")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err4 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate219.errors = vErrors;
return errors === 0;
}
validate219.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_mark = validate221;
const schema68 = {"description":"Mark the position of parts to each other.","type":"object","x-own":true,"x-verb":"mark","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"mark":{"description":"Parts to mark.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"by":{"description":"How the mark is made; cleaning takes off paint.","type":"string","enum":["scribe","punch","paint","etch"]},"across":{"description":"Parts that the mark runs across to.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1}},"required":["mark"],"unevaluatedProperties":false};

function validate221(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate221.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.mark === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "mark"},message:"must have required property '"+"mark"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.mark !== undefined){
let data0 = data.mark;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/mark",schemaPath:"#/properties/mark/type",keyword:"type",params:{type: schema68.properties.mark.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/mark",schemaPath:"#/properties/mark/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/mark/" + i0,schemaPath:"#/properties/mark/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.by !== undefined){
let data2 = data.by;
if(typeof data2 !== "string"){
const err4 = {instancePath:instancePath+"/by",schemaPath:"#/properties/by/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(!((((data2 === "scribe") || (data2 === "punch")) || (data2 === "paint")) || (data2 === "etch"))){
const err5 = {instancePath:instancePath+"/by",schemaPath:"#/properties/by/enum",keyword:"enum",params:{allowedValues: schema68.properties.by.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.across !== undefined){
let data3 = data.across;
if((typeof data3 !== "string") && (!(Array.isArray(data3)))){
const err6 = {instancePath:instancePath+"/across",schemaPath:"#/properties/across/type",keyword:"type",params:{type: schema68.properties.across.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
if(Array.isArray(data3)){
if(data3.length < 1){
const err7 = {instancePath:instancePath+"/across",schemaPath:"#/properties/across/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(typeof data3[i1] !== "string"){
const err8 = {instancePath:instancePath+"/across/" + i1,schemaPath:"#/properties/across/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
}
}
for(const key0 in data){
if(((((((((((((key0 !== "mark") && (key0 !== "by")) && (key0 !== "across")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err9 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
}
else {
const err10 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
validate221.errors = vErrors;
return errors === 0;
}
validate221.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_align = validate223;
const schema69 = {"description":"Bring parts back to their marks.","type":"object","x-own":true,"x-verb":"align","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"align":{"description":"Parts to align.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"to":{"description":"Parts to align it to.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1}},"required":["align"],"unevaluatedProperties":false};

function validate223(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate223.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.align === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "align"},message:"must have required property '"+"align"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.align !== undefined){
let data0 = data.align;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/align",schemaPath:"#/properties/align/type",keyword:"type",params:{type: schema69.properties.align.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/align",schemaPath:"#/properties/align/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/align/" + i0,schemaPath:"#/properties/align/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.to !== undefined){
let data2 = data.to;
if((typeof data2 !== "string") && (!(Array.isArray(data2)))){
const err4 = {instancePath:instancePath+"/to",schemaPath:"#/properties/to/type",keyword:"type",params:{type: schema69.properties.to.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(Array.isArray(data2)){
if(data2.length < 1){
const err5 = {instancePath:instancePath+"/to",schemaPath:"#/properties/to/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len1 = data2.length;
for(let i1=0; i1<len1; i1++){
if(typeof data2[i1] !== "string"){
const err6 = {instancePath:instancePath+"/to/" + i1,schemaPath:"#/properties/to/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
}
for(const key0 in data){
if((((((((((((key0 !== "align") && (key0 !== "to")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err7 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate223.errors = vErrors;
return errors === 0;
}
validate223.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_press = validate225;
const schema70 = {"description":"Press a part in or on.","type":"object","x-own":true,"x-verb":"press","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"press":{"description":"Parts to press.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"force":{"description":"Force not to be exceeded.","type":"string","x-quantity":"force"},"to":{"description":"How far.","$ref":"common.schema.json#/$defs/prose"},"place":{"description":"The part it is pressed into or onto, where there are several.","type":"string","x-ref":"part"},"orient":{"description":"How it faces.","$ref":"common.schema.json#/$defs/prose"},"locate":{"description":"What it locates on.","$ref":"common.schema.json#/$defs/prose"}},"required":["press"],"unevaluatedProperties":false};

function validate225(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate225.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.press === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "press"},message:"must have required property '"+"press"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.press !== undefined){
let data0 = data.press;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/press",schemaPath:"#/properties/press/type",keyword:"type",params:{type: schema70.properties.press.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/press",schemaPath:"#/properties/press/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/press/" + i0,schemaPath:"#/properties/press/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.force !== undefined){
if(typeof data.force !== "string"){
const err4 = {instancePath:instancePath+"/force",schemaPath:"#/properties/force/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.to !== undefined){
if(!(validate127(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.place !== undefined){
if(typeof data.place !== "string"){
const err5 = {instancePath:instancePath+"/place",schemaPath:"#/properties/place/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.orient !== undefined){
if(!(validate127(data.orient, {instancePath:instancePath+"/orient",parentData:data,parentDataProperty:"orient",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.locate !== undefined){
if(!(validate127(data.locate, {instancePath:instancePath+"/locate",parentData:data,parentDataProperty:"locate",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
for(const key0 in data){
if((((((((((((((((key0 !== "press") && (key0 !== "force")) && (key0 !== "to")) && (key0 !== "place")) && (key0 !== "orient")) && (key0 !== "locate")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err6 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate225.errors = vErrors;
return errors === 0;
}
validate225.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_heat = validate230;
const schema71 = {"description":"Heat a part.","type":"object","x-own":true,"x-verb":"heat","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"heat":{"description":"Parts to heat.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"until":{"description":"Temperature to reach.","type":"string","x-quantity":"temperature"}},"required":["heat"],"unevaluatedProperties":false};

function validate230(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate230.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.heat === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "heat"},message:"must have required property '"+"heat"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.heat !== undefined){
let data0 = data.heat;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/heat",schemaPath:"#/properties/heat/type",keyword:"type",params:{type: schema71.properties.heat.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/heat",schemaPath:"#/properties/heat/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/heat/" + i0,schemaPath:"#/properties/heat/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.until !== undefined){
if(typeof data.until !== "string"){
const err4 = {instancePath:instancePath+"/until",schemaPath:"#/properties/until/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
for(const key0 in data){
if((((((((((((key0 !== "heat") && (key0 !== "until")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err5 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate230.errors = vErrors;
return errors === 0;
}
validate230.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_cool = validate232;
const schema72 = {"description":"Cool a part.","type":"object","x-own":true,"x-verb":"cool","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"cool":{"description":"Parts to cool.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"until":{"description":"Temperature to reach.","type":"string","x-quantity":"temperature"}},"required":["cool"],"unevaluatedProperties":false};

function validate232(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate232.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.cool === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "cool"},message:"must have required property '"+"cool"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.cool !== undefined){
let data0 = data.cool;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/cool",schemaPath:"#/properties/cool/type",keyword:"type",params:{type: schema72.properties.cool.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/cool",schemaPath:"#/properties/cool/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/cool/" + i0,schemaPath:"#/properties/cool/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.until !== undefined){
if(typeof data.until !== "string"){
const err4 = {instancePath:instancePath+"/until",schemaPath:"#/properties/until/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
for(const key0 in data){
if((((((((((((key0 !== "cool") && (key0 !== "until")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err5 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate232.errors = vErrors;
return errors === 0;
}
validate232.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_balance = validate234;
const schema73 = {"description":"Balance a group of parts.","type":"object","x-own":true,"x-verb":"balance","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"balance":{"description":"The group.","type":"string","x-ref":"balance-group"},"grade":{"description":"Balance grade, where it is not the family's.","type":"string"},"accept":{"description":"What is acceptable; `record-only` where the value is only written down.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["balance"],"unevaluatedProperties":false};

function validate234(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate234.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.balance === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "balance"},message:"must have required property '"+"balance"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.balance !== undefined){
if(typeof data.balance !== "string"){
const err1 = {instancePath:instancePath+"/balance",schemaPath:"#/properties/balance/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.grade !== undefined){
if(typeof data.grade !== "string"){
const err2 = {instancePath:instancePath+"/grade",schemaPath:"#/properties/grade/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.accept !== undefined){
let data2 = data.accept;
if((typeof data2 !== "string") && (!(data2 && typeof data2 == "object" && !Array.isArray(data2)))){
const err3 = {instancePath:instancePath+"/accept",schemaPath:"#/properties/accept/type",keyword:"type",params:{type: schema73.properties.accept.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
for(const key0 in data2){
if(typeof data2[key0] !== "string"){
const err4 = {instancePath:instancePath+"/accept/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/accept/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
}
if(data["if-not"] !== undefined){
if(!(validate207(data["if-not"], {instancePath:instancePath+"/if-not",parentData:data,parentDataProperty:"if-not",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate207.errors : vErrors.concat(validate207.errors);
errors = vErrors.length;
}
}
for(const key1 in data){
if((((((((((((((key1 !== "balance") && (key1 !== "grade")) && (key1 !== "accept")) && (key1 !== "if-not")) && (key1 !== "with")) && (key1 !== "using")) && (key1 !== "say")) && (key1 !== "warning")) && (key1 !== "caution")) && (key1 !== "notice")) && (key1 !== "figure")) && (key1 !== "when")) && (key1 !== "unless")) && (key1 !== "note")){
const err5 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key1},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate234.errors = vErrors;
return errors === 0;
}
validate234.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_adjust = validate237;
const schema74 = {"description":"Set an adjustment.","type":"object","x-own":true,"x-verb":"adjust","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"adjust":{"description":"Parts to adjust.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"until":{"description":"What must be reached.","$ref":"common.schema.json#/$defs/prose"},"accept":{"description":"What is acceptable; `record-only` where the value is only written down.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"back-off":{"description":"How far it is turned back then.","type":"string"},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["adjust"],"unevaluatedProperties":false};

function validate237(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate237.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.adjust === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "adjust"},message:"must have required property '"+"adjust"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.adjust !== undefined){
let data0 = data.adjust;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/adjust",schemaPath:"#/properties/adjust/type",keyword:"type",params:{type: schema74.properties.adjust.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/adjust",schemaPath:"#/properties/adjust/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/adjust/" + i0,schemaPath:"#/properties/adjust/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.until !== undefined){
if(!(validate127(data.until, {instancePath:instancePath+"/until",parentData:data,parentDataProperty:"until",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.accept !== undefined){
let data3 = data.accept;
if((typeof data3 !== "string") && (!(data3 && typeof data3 == "object" && !Array.isArray(data3)))){
const err4 = {instancePath:instancePath+"/accept",schemaPath:"#/properties/accept/type",keyword:"type",params:{type: schema74.properties.accept.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
for(const key0 in data3){
if(typeof data3[key0] !== "string"){
const err5 = {instancePath:instancePath+"/accept/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/accept/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
}
if(data["back-off"] !== undefined){
if(typeof data["back-off"] !== "string"){
const err6 = {instancePath:instancePath+"/back-off",schemaPath:"#/properties/back-off/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data["if-not"] !== undefined){
if(!(validate207(data["if-not"], {instancePath:instancePath+"/if-not",parentData:data,parentDataProperty:"if-not",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate207.errors : vErrors.concat(validate207.errors);
errors = vErrors.length;
}
}
for(const key1 in data){
if(((((((((((((((key1 !== "adjust") && (key1 !== "until")) && (key1 !== "accept")) && (key1 !== "back-off")) && (key1 !== "if-not")) && (key1 !== "with")) && (key1 !== "using")) && (key1 !== "say")) && (key1 !== "warning")) && (key1 !== "caution")) && (key1 !== "notice")) && (key1 !== "figure")) && (key1 !== "when")) && (key1 !== "unless")) && (key1 !== "note")){
const err7 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key1},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate237.errors = vErrors;
return errors === 0;
}
validate237.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_check = validate241;
const schema75 = {"description":"Check something.","type":"object","x-own":true,"x-verb":"check","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"check":{"description":"A check of the family by id, or what must be found true.","$ref":"common.schema.json#/$defs/prose","x-ref":"check","x-ref-or-prose":true},"accept":{"description":"What is acceptable; `record-only` where the value is only written down.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"if-not":{"description":"What to do when it is not as it should be.","$ref":"#/$defs/if-not"}},"required":["check"],"unevaluatedProperties":false};

function validate241(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate241.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.check === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "check"},message:"must have required property '"+"check"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.check !== undefined){
if(!(validate127(data.check, {instancePath:instancePath+"/check",parentData:data,parentDataProperty:"check",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.accept !== undefined){
let data1 = data.accept;
if((typeof data1 !== "string") && (!(data1 && typeof data1 == "object" && !Array.isArray(data1)))){
const err1 = {instancePath:instancePath+"/accept",schemaPath:"#/properties/accept/type",keyword:"type",params:{type: schema75.properties.accept.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
for(const key0 in data1){
if(typeof data1[key0] !== "string"){
const err2 = {instancePath:instancePath+"/accept/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/accept/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
}
if(data["if-not"] !== undefined){
if(!(validate207(data["if-not"], {instancePath:instancePath+"/if-not",parentData:data,parentDataProperty:"if-not",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate207.errors : vErrors.concat(validate207.errors);
errors = vErrors.length;
}
}
for(const key1 in data){
if(((((((((((((key1 !== "check") && (key1 !== "accept")) && (key1 !== "if-not")) && (key1 !== "with")) && (key1 !== "using")) && (key1 !== "say")) && (key1 !== "warning")) && (key1 !== "caution")) && (key1 !== "notice")) && (key1 !== "figure")) && (key1 !== "when")) && (key1 !== "unless")) && (key1 !== "note")){
const err3 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key1},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate241.errors = vErrors;
return errors === 0;
}
validate241.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_wait = validate245;
const schema76 = {"description":"Wait.","type":"object","x-own":true,"x-verb":"wait","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"wait":{"description":"How long, or `cure`.","type":"string","x-quantity":"time"},"of":{"description":"The consumable that cures meanwhile.","type":["string","array"],"x-ref":"consumable","items":{"type":"string"},"minItems":1}},"required":["wait"],"unevaluatedProperties":false};

function validate245(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate245.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.wait === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "wait"},message:"must have required property '"+"wait"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.wait !== undefined){
if(typeof data.wait !== "string"){
const err1 = {instancePath:instancePath+"/wait",schemaPath:"#/properties/wait/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.of !== undefined){
let data1 = data.of;
if((typeof data1 !== "string") && (!(Array.isArray(data1)))){
const err2 = {instancePath:instancePath+"/of",schemaPath:"#/properties/of/type",keyword:"type",params:{type: schema76.properties.of.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/of",schemaPath:"#/properties/of/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err4 = {instancePath:instancePath+"/of/" + i0,schemaPath:"#/properties/of/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
}
for(const key0 in data){
if((((((((((((key0 !== "wait") && (key0 !== "of")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err5 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate245.errors = vErrors;
return errors === 0;
}
validate245.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_send = validate247;
const schema77 = {"description":"Send a part out.","type":"object","x-own":true,"x-verb":"send","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"send":{"description":"Parts to send.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"to":{"description":"Where to, and what for.","$ref":"common.schema.json#/$defs/prose"},"certificate":{"description":"The certificate that must come back.","$ref":"common.schema.json#/$defs/prose"}},"required":["send"],"unevaluatedProperties":false};

function validate247(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate247.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.send === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "send"},message:"must have required property '"+"send"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.send !== undefined){
let data0 = data.send;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/send",schemaPath:"#/properties/send/type",keyword:"type",params:{type: schema77.properties.send.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/send",schemaPath:"#/properties/send/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/send/" + i0,schemaPath:"#/properties/send/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.to !== undefined){
if(!(validate127(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.certificate !== undefined){
if(!(validate127(data.certificate, {instancePath:instancePath+"/certificate",parentData:data,parentDataProperty:"certificate",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
for(const key0 in data){
if(((((((((((((key0 !== "send") && (key0 !== "to")) && (key0 !== "certificate")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err4 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate247.errors = vErrors;
return errors === 0;
}
validate247.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_receive = validate251;
const schema78 = {"description":"Take a part in.","type":"object","x-own":true,"x-verb":"receive","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"receive":{"description":"Parts taken in.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"certificate":{"description":"The certificate that comes with it.","$ref":"common.schema.json#/$defs/prose"}},"required":["receive"],"unevaluatedProperties":false};

function validate251(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate251.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.receive === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "receive"},message:"must have required property '"+"receive"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.receive !== undefined){
let data0 = data.receive;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/receive",schemaPath:"#/properties/receive/type",keyword:"type",params:{type: schema78.properties.receive.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/receive",schemaPath:"#/properties/receive/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/receive/" + i0,schemaPath:"#/properties/receive/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.certificate !== undefined){
if(!(validate127(data.certificate, {instancePath:instancePath+"/certificate",parentData:data,parentDataProperty:"certificate",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
for(const key0 in data){
if((((((((((((key0 !== "receive") && (key0 !== "certificate")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err4 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate251.errors = vErrors;
return errors === 0;
}
validate251.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_return = validate254;
const schema79 = {"description":"Give a part back to its owner.","type":"object","x-own":true,"x-verb":"return","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"return":{"description":"Parts given back.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"to":{"description":"To whom.","$ref":"common.schema.json#/$defs/prose"}},"required":["return"],"unevaluatedProperties":false};

function validate254(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate254.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.return === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "return"},message:"must have required property '"+"return"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.return !== undefined){
let data0 = data.return;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/return",schemaPath:"#/properties/return/type",keyword:"type",params:{type: schema79.properties.return.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/return",schemaPath:"#/properties/return/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/return/" + i0,schemaPath:"#/properties/return/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.to !== undefined){
if(!(validate127(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
for(const key0 in data){
if((((((((((((key0 !== "return") && (key0 !== "to")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err4 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate254.errors = vErrors;
return errors === 0;
}
validate254.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_discard = validate257;
const schema80 = {"description":"Scrap a part.","type":"object","x-own":true,"x-verb":"discard","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"discard":{"description":"Parts to scrap.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1},"to":{"description":"Where to.","$ref":"common.schema.json#/$defs/prose"}},"required":["discard"],"unevaluatedProperties":false};

function validate257(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate257.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.discard === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "discard"},message:"must have required property '"+"discard"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.discard !== undefined){
let data0 = data.discard;
if((typeof data0 !== "string") && (!(Array.isArray(data0)))){
const err1 = {instancePath:instancePath+"/discard",schemaPath:"#/properties/discard/type",keyword:"type",params:{type: schema80.properties.discard.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data0)){
if(data0.length < 1){
const err2 = {instancePath:instancePath+"/discard",schemaPath:"#/properties/discard/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
if(typeof data0[i0] !== "string"){
const err3 = {instancePath:instancePath+"/discard/" + i0,schemaPath:"#/properties/discard/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
if(data.to !== undefined){
if(!(validate127(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
for(const key0 in data){
if((((((((((((key0 !== "discard") && (key0 !== "to")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err4 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate257.errors = vErrors;
return errors === 0;
}
validate257.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_verb_record = validate260;
const schema81 = {"description":"Write something down.","type":"object","x-own":true,"x-verb":"record","allOf":[{"$ref":"#/$defs/instruction-keys"}],"properties":{"record":{"description":"What is written down.","$ref":"common.schema.json#/$defs/prose"},"serial":{"description":"Parts whose serial number is written down.","type":["string","array"],"x-ref":"part","items":{"type":"string"},"minItems":1}},"required":["record"],"unevaluatedProperties":false};

function validate260(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate260.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(validate166(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate166.errors : vErrors.concat(validate166.errors);
errors = vErrors.length;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.record === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "record"},message:"must have required property '"+"record"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.record !== undefined){
if(!(validate127(data.record, {instancePath:instancePath+"/record",parentData:data,parentDataProperty:"record",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.serial !== undefined){
let data1 = data.serial;
if((typeof data1 !== "string") && (!(Array.isArray(data1)))){
const err1 = {instancePath:instancePath+"/serial",schemaPath:"#/properties/serial/type",keyword:"type",params:{type: schema81.properties.serial.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/serial",schemaPath:"#/properties/serial/minItems",keyword:"minItems",params:{limit: 1},message:"must NOT have fewer than 1 items"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(typeof data1[i0] !== "string"){
const err3 = {instancePath:instancePath+"/serial/" + i0,schemaPath:"#/properties/serial/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
for(const key0 in data){
if((((((((((((key0 !== "record") && (key0 !== "serial")) && (key0 !== "with")) && (key0 !== "using")) && (key0 !== "say")) && (key0 !== "warning")) && (key0 !== "caution")) && (key0 !== "notice")) && (key0 !== "figure")) && (key0 !== "when")) && (key0 !== "unless")) && (key0 !== "note")){
const err4 = {instancePath,schemaPath:"#/unevaluatedProperties",keyword:"unevaluatedProperties",params:{unevaluatedProperty: key0},message:"must NOT have unevaluated properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate260.errors = vErrors;
return errors === 0;
}
validate260.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_concession = validate263;
const schema82 = {"description":"A finding that is let stand.","type":"object","properties":{"rule":{"description":"Id of the rule.","type":"string","x-ref":"rule"},"at":{"description":"The step it is let stand at.","type":"string","x-ref":"step"},"about":{"description":"The ids that the finding is about, where the step has several.","type":["string","array"],"items":{"type":"string"}},"because":{"description":"Why it may stand.","$ref":"common.schema.json#/$defs/prose"},"by":{"description":"Who allows it.","type":"string"},"until":{"description":"Last day on which it holds.","type":"string","pattern":"^\\d{4}-\\d{2}-\\d{2}$","x-date":true}},"required":["rule","because","by","until"],"additionalProperties":false,"x-own":true};

function validate263(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate263.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.rule === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "rule"},message:"must have required property '"+"rule"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.because === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "because"},message:"must have required property '"+"because"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.by === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "by"},message:"must have required property '"+"by"+"'"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data.until === undefined){
const err3 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "until"},message:"must have required property '"+"until"+"'"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "rule") || (key0 === "at")) || (key0 === "about")) || (key0 === "because")) || (key0 === "by")) || (key0 === "until"))){
const err4 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.rule !== undefined){
if(typeof data.rule !== "string"){
const err5 = {instancePath:instancePath+"/rule",schemaPath:"#/properties/rule/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.at !== undefined){
if(typeof data.at !== "string"){
const err6 = {instancePath:instancePath+"/at",schemaPath:"#/properties/at/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.about !== undefined){
let data2 = data.about;
if((typeof data2 !== "string") && (!(Array.isArray(data2)))){
const err7 = {instancePath:instancePath+"/about",schemaPath:"#/properties/about/type",keyword:"type",params:{type: schema82.properties.about.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
if(Array.isArray(data2)){
const len0 = data2.length;
for(let i0=0; i0<len0; i0++){
if(typeof data2[i0] !== "string"){
const err8 = {instancePath:instancePath+"/about/" + i0,schemaPath:"#/properties/about/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
}
}
if(data.because !== undefined){
if(!(validate127(data.because, {instancePath:instancePath+"/because",parentData:data,parentDataProperty:"because",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.by !== undefined){
if(typeof data.by !== "string"){
const err9 = {instancePath:instancePath+"/by",schemaPath:"#/properties/by/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data.until !== undefined){
let data6 = data.until;
if(typeof data6 === "string"){
if(!pattern18.test(data6)){
const err10 = {instancePath:instancePath+"/until",schemaPath:"#/properties/until/pattern",keyword:"pattern",params:{pattern: "^\\d{4}-\\d{2}-\\d{2}$"},message:"must match pattern \""+"^\\d{4}-\\d{2}-\\d{2}$"+"\""};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
else {
const err11 = {instancePath:instancePath+"/until",schemaPath:"#/properties/until/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
}
else {
const err12 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
validate263.errors = vErrors;
return errors === 0;
}
validate263.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_reading = validate265;
const schema83 = {"description":"A value that is read on the bench and used later.","type":"object","properties":{"name":{"description":"What is read, as the sheet prints it.","$ref":"common.schema.json#/$defs/prose"},"quantity":{"description":"The dimension of the value.","type":"string","enum":["torque","force","length","angle","temperature","pressure","mass","unbalance","time","rotational-speed","voltage","current","resistance","flow","ratio"]},"accept":{"description":"What is acceptable.","type":["string","object"],"x-quantity":"any","x-by-build":true,"additionalProperties":{"type":"string"}},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}},"required":["name"],"additionalProperties":false,"x-own":true};

function validate265(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate265.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"},message:"must have required property '"+"name"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "name") || (key0 === "quantity")) || (key0 === "accept")) || (key0 === "note"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate127(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.quantity !== undefined){
let data1 = data.quantity;
if(typeof data1 !== "string"){
const err2 = {instancePath:instancePath+"/quantity",schemaPath:"#/properties/quantity/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(!(((((((((((((((data1 === "torque") || (data1 === "force")) || (data1 === "length")) || (data1 === "angle")) || (data1 === "temperature")) || (data1 === "pressure")) || (data1 === "mass")) || (data1 === "unbalance")) || (data1 === "time")) || (data1 === "rotational-speed")) || (data1 === "voltage")) || (data1 === "current")) || (data1 === "resistance")) || (data1 === "flow")) || (data1 === "ratio"))){
const err3 = {instancePath:instancePath+"/quantity",schemaPath:"#/properties/quantity/enum",keyword:"enum",params:{allowedValues: schema83.properties.quantity.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.accept !== undefined){
let data2 = data.accept;
if((typeof data2 !== "string") && (!(data2 && typeof data2 == "object" && !Array.isArray(data2)))){
const err4 = {instancePath:instancePath+"/accept",schemaPath:"#/properties/accept/type",keyword:"type",params:{type: schema83.properties.accept.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
for(const key1 in data2){
if(typeof data2[key1] !== "string"){
const err5 = {instancePath:instancePath+"/accept/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/accept/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
}
if(data.note !== undefined){
if(!(validate127(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate265.errors = vErrors;
return errors === 0;
}
validate265.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const procedure_figure = validate268;
const schema84 = {"description":"A figure.","type":"object","properties":{"file":{"description":"Path of the SVG file, relative to this document.","type":"string","x-path":"figure"},"alt":{"description":"What the figure shows, in words, for whoever cannot see it.","$ref":"common.schema.json#/$defs/prose"},"caption":{"description":"The line printed below the figure.","$ref":"common.schema.json#/$defs/prose"}},"required":["file"],"additionalProperties":false,"x-own":true};

function validate268(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate268.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.file === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "file"},message:"must have required property '"+"file"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((key0 === "file") || (key0 === "alt")) || (key0 === "caption"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.file !== undefined){
if(typeof data.file !== "string"){
const err2 = {instancePath:instancePath+"/file",schemaPath:"#/properties/file/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.alt !== undefined){
if(!(validate127(data.alt, {instancePath:instancePath+"/alt",parentData:data,parentDataProperty:"alt",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.caption !== undefined){
if(!(validate127(data.caption, {instancePath:instancePath+"/caption",parentData:data,parentDataProperty:"caption",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate268.errors = vErrors;
return errors === 0;
}
validate268.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

export const settings = validate271;
const schema85 = {"$schema":"https://json-schema.org/draft/2020-12/schema","title":"Witnessmark settings","description":"Settings for the documents in this folder and below; editor and command line read the same ones.","type":"object","additionalProperties":false,"required":["witnessmark"],"properties":{"witnessmark":{"description":"Version of the document format. Always 1.","type":"string","pattern":"^1$"},"severities":{"description":"Severity by rule id.","type":"object","x-ref-keys":"rule","additionalProperties":{"type":"string","enum":["error","warning","info","off"]}},"units":{"description":"First and second unit on the sheet, by dimension.","type":"object","properties":{"torque":{"description":"Units for torque, the first one leading.","type":["string","array"],"items":{"type":"string"},"maxItems":2},"length":{"description":"Units for length, the first one leading.","type":["string","array"],"items":{"type":"string"},"maxItems":2},"temperature":{"description":"Units for temperature, the first one leading.","type":["string","array"],"items":{"type":"string"},"maxItems":2},"pressure":{"description":"Units for pressure, the first one leading.","type":["string","array"],"items":{"type":"string"},"maxItems":2},"force":{"description":"Units for force, the first one leading.","type":["string","array"],"items":{"type":"string"},"maxItems":2},"mass":{"description":"Units for mass, the first one leading.","type":["string","array"],"items":{"type":"string"},"maxItems":2},"unbalance":{"description":"Units for unbalance, the first one leading.","type":["string","array"],"items":{"type":"string"},"maxItems":2}},"required":[],"additionalProperties":false},"paper":{"description":"Paper of the sheet.","type":"string","enum":["a4","letter"]},"sides":{"description":"Whether the sheet is printed on one side of the paper or on both.","type":"string","enum":["single","double"]},"language":{"description":"Language of the sheet.","type":"string","enum":["en","de","es"]},"written-in":{"description":"Language of the texts of the documents where they stand without one; usually `en`.","type":"string","enum":["en","de","es"]},"revision-letters":{"description":"How revision letters are counted.","type":"object","properties":{"skip":{"description":"Letters that are left out, for example IOQSXZ.","type":"string"}},"required":[],"additionalProperties":false},"note":{"description":"A remark for the writer and the reviewer; it is not printed as an instruction.","$ref":"common.schema.json#/$defs/prose"}}};

function validate272(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate272.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema21.type},message:"must be string,object"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.text === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "text"},message:"must have required property '"+"text"+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "text") || (key0 === "en")) || (key0 === "de")) || (key0 === "es"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.text !== undefined){
if(typeof data.text !== "string"){
const err3 = {instancePath:instancePath+"/text",schemaPath:"#/properties/text/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.en !== undefined){
if(typeof data.en !== "string"){
const err4 = {instancePath:instancePath+"/en",schemaPath:"#/properties/en/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.de !== undefined){
if(typeof data.de !== "string"){
const err5 = {instancePath:instancePath+"/de",schemaPath:"#/properties/de/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.es !== undefined){
if(typeof data.es !== "string"){
const err6 = {instancePath:instancePath+"/es",schemaPath:"#/properties/es/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
validate272.errors = vErrors;
return errors === 0;
}
validate272.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate271(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate271.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.witnessmark === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "witnessmark"},message:"must have required property '"+"witnessmark"+"'"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema85.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.witnessmark !== undefined){
let data0 = data.witnessmark;
if(typeof data0 === "string"){
if(!pattern3.test(data0)){
const err2 = {instancePath:instancePath+"/witnessmark",schemaPath:"#/properties/witnessmark/pattern",keyword:"pattern",params:{pattern: "^1$"},message:"must match pattern \""+"^1$"+"\""};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
else {
const err3 = {instancePath:instancePath+"/witnessmark",schemaPath:"#/properties/witnessmark/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.severities !== undefined){
let data1 = data.severities;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
for(const key1 in data1){
let data2 = data1[key1];
if(typeof data2 !== "string"){
const err4 = {instancePath:instancePath+"/severities/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/severities/additionalProperties/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(!((((data2 === "error") || (data2 === "warning")) || (data2 === "info")) || (data2 === "off"))){
const err5 = {instancePath:instancePath+"/severities/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/severities/additionalProperties/enum",keyword:"enum",params:{allowedValues: schema85.properties.severities.additionalProperties.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
else {
const err6 = {instancePath:instancePath+"/severities",schemaPath:"#/properties/severities/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.units !== undefined){
let data3 = data.units;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
for(const key2 in data3){
if(!(((((((key2 === "torque") || (key2 === "length")) || (key2 === "temperature")) || (key2 === "pressure")) || (key2 === "force")) || (key2 === "mass")) || (key2 === "unbalance"))){
const err7 = {instancePath:instancePath+"/units",schemaPath:"#/properties/units/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key2},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data3.torque !== undefined){
let data4 = data3.torque;
if((typeof data4 !== "string") && (!(Array.isArray(data4)))){
const err8 = {instancePath:instancePath+"/units/torque",schemaPath:"#/properties/units/properties/torque/type",keyword:"type",params:{type: schema85.properties.units.properties.torque.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
if(Array.isArray(data4)){
if(data4.length > 2){
const err9 = {instancePath:instancePath+"/units/torque",schemaPath:"#/properties/units/properties/torque/maxItems",keyword:"maxItems",params:{limit: 2},message:"must NOT have more than 2 items"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len0 = data4.length;
for(let i0=0; i0<len0; i0++){
if(typeof data4[i0] !== "string"){
const err10 = {instancePath:instancePath+"/units/torque/" + i0,schemaPath:"#/properties/units/properties/torque/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
}
}
if(data3.length !== undefined){
let data6 = data3.length;
if((typeof data6 !== "string") && (!(Array.isArray(data6)))){
const err11 = {instancePath:instancePath+"/units/length",schemaPath:"#/properties/units/properties/length/type",keyword:"type",params:{type: schema85.properties.units.properties.length.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
if(Array.isArray(data6)){
if(data6.length > 2){
const err12 = {instancePath:instancePath+"/units/length",schemaPath:"#/properties/units/properties/length/maxItems",keyword:"maxItems",params:{limit: 2},message:"must NOT have more than 2 items"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
const len1 = data6.length;
for(let i1=0; i1<len1; i1++){
if(typeof data6[i1] !== "string"){
const err13 = {instancePath:instancePath+"/units/length/" + i1,schemaPath:"#/properties/units/properties/length/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
}
}
if(data3.temperature !== undefined){
let data8 = data3.temperature;
if((typeof data8 !== "string") && (!(Array.isArray(data8)))){
const err14 = {instancePath:instancePath+"/units/temperature",schemaPath:"#/properties/units/properties/temperature/type",keyword:"type",params:{type: schema85.properties.units.properties.temperature.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
if(Array.isArray(data8)){
if(data8.length > 2){
const err15 = {instancePath:instancePath+"/units/temperature",schemaPath:"#/properties/units/properties/temperature/maxItems",keyword:"maxItems",params:{limit: 2},message:"must NOT have more than 2 items"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
const len2 = data8.length;
for(let i2=0; i2<len2; i2++){
if(typeof data8[i2] !== "string"){
const err16 = {instancePath:instancePath+"/units/temperature/" + i2,schemaPath:"#/properties/units/properties/temperature/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
}
}
if(data3.pressure !== undefined){
let data10 = data3.pressure;
if((typeof data10 !== "string") && (!(Array.isArray(data10)))){
const err17 = {instancePath:instancePath+"/units/pressure",schemaPath:"#/properties/units/properties/pressure/type",keyword:"type",params:{type: schema85.properties.units.properties.pressure.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
if(Array.isArray(data10)){
if(data10.length > 2){
const err18 = {instancePath:instancePath+"/units/pressure",schemaPath:"#/properties/units/properties/pressure/maxItems",keyword:"maxItems",params:{limit: 2},message:"must NOT have more than 2 items"};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
const len3 = data10.length;
for(let i3=0; i3<len3; i3++){
if(typeof data10[i3] !== "string"){
const err19 = {instancePath:instancePath+"/units/pressure/" + i3,schemaPath:"#/properties/units/properties/pressure/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
}
}
if(data3.force !== undefined){
let data12 = data3.force;
if((typeof data12 !== "string") && (!(Array.isArray(data12)))){
const err20 = {instancePath:instancePath+"/units/force",schemaPath:"#/properties/units/properties/force/type",keyword:"type",params:{type: schema85.properties.units.properties.force.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
if(Array.isArray(data12)){
if(data12.length > 2){
const err21 = {instancePath:instancePath+"/units/force",schemaPath:"#/properties/units/properties/force/maxItems",keyword:"maxItems",params:{limit: 2},message:"must NOT have more than 2 items"};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
const len4 = data12.length;
for(let i4=0; i4<len4; i4++){
if(typeof data12[i4] !== "string"){
const err22 = {instancePath:instancePath+"/units/force/" + i4,schemaPath:"#/properties/units/properties/force/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
}
}
if(data3.mass !== undefined){
let data14 = data3.mass;
if((typeof data14 !== "string") && (!(Array.isArray(data14)))){
const err23 = {instancePath:instancePath+"/units/mass",schemaPath:"#/properties/units/properties/mass/type",keyword:"type",params:{type: schema85.properties.units.properties.mass.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
if(Array.isArray(data14)){
if(data14.length > 2){
const err24 = {instancePath:instancePath+"/units/mass",schemaPath:"#/properties/units/properties/mass/maxItems",keyword:"maxItems",params:{limit: 2},message:"must NOT have more than 2 items"};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
const len5 = data14.length;
for(let i5=0; i5<len5; i5++){
if(typeof data14[i5] !== "string"){
const err25 = {instancePath:instancePath+"/units/mass/" + i5,schemaPath:"#/properties/units/properties/mass/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
}
}
if(data3.unbalance !== undefined){
let data16 = data3.unbalance;
if((typeof data16 !== "string") && (!(Array.isArray(data16)))){
const err26 = {instancePath:instancePath+"/units/unbalance",schemaPath:"#/properties/units/properties/unbalance/type",keyword:"type",params:{type: schema85.properties.units.properties.unbalance.type},message:"must be string,array"};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
if(Array.isArray(data16)){
if(data16.length > 2){
const err27 = {instancePath:instancePath+"/units/unbalance",schemaPath:"#/properties/units/properties/unbalance/maxItems",keyword:"maxItems",params:{limit: 2},message:"must NOT have more than 2 items"};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
const len6 = data16.length;
for(let i6=0; i6<len6; i6++){
if(typeof data16[i6] !== "string"){
const err28 = {instancePath:instancePath+"/units/unbalance/" + i6,schemaPath:"#/properties/units/properties/unbalance/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
}
}
}
}
else {
const err29 = {instancePath:instancePath+"/units",schemaPath:"#/properties/units/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data.paper !== undefined){
let data18 = data.paper;
if(typeof data18 !== "string"){
const err30 = {instancePath:instancePath+"/paper",schemaPath:"#/properties/paper/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
if(!((data18 === "a4") || (data18 === "letter"))){
const err31 = {instancePath:instancePath+"/paper",schemaPath:"#/properties/paper/enum",keyword:"enum",params:{allowedValues: schema85.properties.paper.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
if(data.sides !== undefined){
let data19 = data.sides;
if(typeof data19 !== "string"){
const err32 = {instancePath:instancePath+"/sides",schemaPath:"#/properties/sides/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
if(!((data19 === "single") || (data19 === "double"))){
const err33 = {instancePath:instancePath+"/sides",schemaPath:"#/properties/sides/enum",keyword:"enum",params:{allowedValues: schema85.properties.sides.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
if(data.language !== undefined){
let data20 = data.language;
if(typeof data20 !== "string"){
const err34 = {instancePath:instancePath+"/language",schemaPath:"#/properties/language/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
if(!(((data20 === "en") || (data20 === "de")) || (data20 === "es"))){
const err35 = {instancePath:instancePath+"/language",schemaPath:"#/properties/language/enum",keyword:"enum",params:{allowedValues: schema85.properties.language.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
if(data["written-in"] !== undefined){
let data21 = data["written-in"];
if(typeof data21 !== "string"){
const err36 = {instancePath:instancePath+"/written-in",schemaPath:"#/properties/written-in/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
if(!(((data21 === "en") || (data21 === "de")) || (data21 === "es"))){
const err37 = {instancePath:instancePath+"/written-in",schemaPath:"#/properties/written-in/enum",keyword:"enum",params:{allowedValues: schema85.properties["written-in"].enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
if(data["revision-letters"] !== undefined){
let data22 = data["revision-letters"];
if(data22 && typeof data22 == "object" && !Array.isArray(data22)){
for(const key3 in data22){
if(!(key3 === "skip")){
const err38 = {instancePath:instancePath+"/revision-letters",schemaPath:"#/properties/revision-letters/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key3},message:"must NOT have additional properties"};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
}
if(data22.skip !== undefined){
if(typeof data22.skip !== "string"){
const err39 = {instancePath:instancePath+"/revision-letters/skip",schemaPath:"#/properties/revision-letters/properties/skip/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
}
else {
const err40 = {instancePath:instancePath+"/revision-letters",schemaPath:"#/properties/revision-letters/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
}
if(data.note !== undefined){
if(!(validate272(data.note, {instancePath:instancePath+"/note",parentData:data,parentDataProperty:"note",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate272.errors : vErrors.concat(validate272.errors);
errors = vErrors.length;
}
}
}
else {
const err41 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
validate271.errors = vErrors;
return errors === 0;
}
validate271.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

