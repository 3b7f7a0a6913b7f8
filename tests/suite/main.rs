//! One test binary, by capability, in reading order.

mod drawings;
mod fonts;
mod layout;
mod pdf;
mod readback;
mod sample;
mod tidy;
