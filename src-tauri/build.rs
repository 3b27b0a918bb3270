//! Reads the configuration, and puts the only command under the capabilities.

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let commands = tauri_build::AppManifest::new().commands(&["ask"]);
    Ok(tauri_build::try_build(tauri_build::Attributes::new().app_manifest(commands))?)
}
