//! Fonts that a user adds to the committed ones.

use leafwright::fonts::{FaceId, Library};

#[test]
fn the_committed_faces_are_five_and_open() {
    let library = Library::new();
    assert_eq!(library.faces().count(), 5);
    for (id, face) in library.faces() {
        assert!(face.metrics.may_be_embedded);
        // Source Serif 4 and Source Sans 3 count a thousand units to the em.
        assert_eq!(face.metrics.units_per_em, 1000);
        assert!(face.metrics.postscript.starts_with("Source"));
        assert_eq!(library.face(id).name, face.name);
    }
}

#[test]
fn a_font_can_be_added_and_nonsense_is_refused() {
    let mut library = Library::new();
    let sans = library.face(FaceId::SANS).bytes.clone();
    let added = library.add(sans.as_ref()).expect("a sound font");
    assert_eq!(library.face(added).name, "User1");
    assert!(library.add(b"").is_err());
    assert!(library.add(b"OTTO and no more").is_err());
    assert!(library.add(b"ttcf\0\x01\0\0").unwrap_err().contains("collections"));
    // Cut short anywhere, it is refused or read, but nothing breaks.
    for length in (0..sans.as_ref().len()).step_by(9_973) {
        let _ = library.add(&sans.as_ref()[..length]);
    }
}
