//! The desktop program: it only starts the library, which the phone starts in its own way.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

fn main() {
    mendline_app::run();
}
