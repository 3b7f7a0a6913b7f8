//! The faces that handouts are set in.
