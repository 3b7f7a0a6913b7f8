//! Pictures that are made ready once for many files.

use leafwright::layout::Press;
use leafwright::pdf::{self, PdfInfo, Resolution};

use crate::paint::{jpeg, shade};
use crate::pictures::{Asked, laid, with_photo};

#[test]
fn files_do_not_depend_on_the_pictures_that_were_kept_ready() {
    let mut press = Press::new();
    let info = |dots| PdfInfo { pictures: Resolution(dots), ..PdfInfo::default() };
    let files = [("a.jpg", jpeg(600, 400, shade))];
    let pages = [false, true].map(|gray| {
        let asked = Asked { gray, ..Asked::default() };
        laid(&with_photo("a.jpg"), &files, &asked, &mut press).0
    });
    let mut ready = pdf::Ready::default();
    // Twice, so that the second time everything is there already, in two sizes.
    for _ in 0..2 {
        for (laid, dots) in pages.iter().flat_map(|it| [(it, 300), (it, 40)]) {
            let alone = pdf::write(laid, press.library(), &info(dots)).expect("a file");
            let after = pdf::write_again(laid, press.library(), &info(dots), &mut ready);
            assert!(alone == after.expect("a file"), "{dots} dots an inch");
        }
    }
}
