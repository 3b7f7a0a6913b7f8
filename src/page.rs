//! Finished pages: items at fixed places.
