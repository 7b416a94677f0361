/** Which standards a printed file names itself by. `tagged` names none: for a file that is changed afterwards. */
export type PdfStandard = 'tagged' | 'ua' | 'archive';

/**
 * The properties of the file (XMP, ISO 16684-1) with the standards that it is made to: PDF/UA-1 (ISO 14289-1), and for
 * the archive PDF/A-3 level A (ISO 19005-3) as well. Text here is one character for each byte.
 */
export function identifiedXmp(xmp: string, standard: PdfStandard, instanceId: string): string {
  const said = xmp.replace(/(<xmpMM:InstanceID>)[^<]*/u, `$1${instanceId}`);
  return said.replace('</rdf:RDF>', `${descriptions[standard]}</rdf:RDF>`);
}

const ua =
  '<rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"><pdfuaid:part>1</pdfuaid:part></rdf:Description>';

const a3 =
  '<rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"><pdfaid:part>3</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance></rdf:Description>';

// An archived file explains each property that the standard for archives does not know, here the other standard's.
const uaExplained = [
  '<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">',
  '<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">',
  '<pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>',
  '<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI><pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>',
  '<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource"><pdfaProperty:name>part</pdfaProperty:name>',
  '<pdfaProperty:valueType>Integer</pdfaProperty:valueType><pdfaProperty:category>internal</pdfaProperty:category>',
  '<pdfaProperty:description>Part of ISO 14289 that the file is made to</pdfaProperty:description>',
  '</rdf:li></rdf:Seq></pdfaSchema:property></rdf:li></rdf:Bag></pdfaExtension:schemas></rdf:Description>',
].join('');

const descriptions: Readonly<Record<PdfStandard, string>> = { tagged: '', ua, archive: ua + a3 + uaExplained };
