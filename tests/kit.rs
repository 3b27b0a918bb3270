//! What the tests share: worlds, fixtures, small builders.
