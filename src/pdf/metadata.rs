//! What the file says about itself: XMP (ISO 16684-1) and the info dictionary, which
//! say the same.

use super::{Flavour, PdfInfo};
use crate::page::Laid;

/// The program's name in metadata.
pub(super) const PRODUCER: &str = concat!("leafwright ", env!("CARGO_PKG_VERSION"));

/// Declares the properties of PDF/UA, which PDF/A knows nothing of.
const UA_SCHEMA: &str = r#"
  <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
   <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
    <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
    <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
    <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
    <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
     <pdfaProperty:name>part</pdfaProperty:name>
     <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
     <pdfaProperty:category>internal</pdfaProperty:category>
     <pdfaProperty:description>part of ISO 14289</pdfaProperty:description>
    </rdf:li></rdf:Seq></pdfaSchema:property>
   </rdf:li></rdf:Bag></pdfaExtension:schemas>
  </rdf:Description>"#;

/// The XMP packet.
pub(super) fn xmp(laid: &Laid, info: &PdfInfo) -> String {
    let title = escape(&laid.title);
    let language = escape(&laid.language);
    let mut about = format!(
        "\n   <dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">{title}</rdf:li></rdf:Alt></dc:title>"
    );
    if let Some(author) = &info.author {
        let author = escape(author);
        about += &format!(
            "\n   <dc:creator><rdf:Seq><rdf:li>{author}</rdf:li></rdf:Seq></dc:creator>"
        );
    }
    if let Some(subject) = &info.subject {
        let subject = escape(subject);
        about += &format!(
            "\n   <dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">{subject}</rdf:li></rdf:Alt></dc:description>"
        );
    }
    if info.flavour == Flavour::Tagged {
        about += &format!(
            "\n   <dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>"
        );
    }
    let (part, level) = match info.flavour {
        Flavour::Tagged => (2, "A"),
        Flavour::Archive1b => (1, "B"),
    };
    let ua = match info.flavour {
        Flavour::Tagged => {
            let id = "\n  <rdf:Description rdf:about=\"\" xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\">\n   <pdfuaid:part>1</pdfuaid:part>\n  </rdf:Description>";
            format!("{id}{UA_SCHEMA}")
        }
        Flavour::Archive1b => String::new(),
    };
    format!(
        "<?xpacket begin=\"\u{feff}\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>
<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">
 <rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">
  <rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\">{about}
  </rdf:Description>
  <rdf:Description rdf:about=\"\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\">
   <pdf:Producer>{PRODUCER}</pdf:Producer>
  </rdf:Description>
  <rdf:Description rdf:about=\"\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\">
   <pdfaid:part>{part}</pdfaid:part>
   <pdfaid:conformance>{level}</pdfaid:conformance>
  </rdf:Description>{ua}
 </rdf:RDF>
</x:xmpmeta>
<?xpacket end=\"w\"?>"
    )
}

/// Text as XML holds it.
fn escape(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '&' => escaped += "&amp;",
            '<' => escaped += "&lt;",
            '>' => escaped += "&gt;",
            '"' => escaped += "&quot;",
            // Control characters have no place in XML 1.0.
            it if it.is_control() => escaped.push(' '),
            it => escaped.push(it),
        }
    }
    escaped
}
