//! The window: one command, [`ask`], between the screens and the core.

#[path = "../../core/src/bin/mendline/edge.rs"]
mod edge;
#[path = "../../core/src/bin/mendline/ports.rs"]
mod ports;

use std::path::PathBuf;
use std::sync::Arc;

use tauri::{App, Builder, Manager, State, Wry};

use edge::Edge;

/// A data folder that can't be opened still gets a window, because the screens have to say so.
struct Opened(Result<Edge, String>);

/// Says why the core was not asked; the same envelope may be sent again.
#[derive(serde::Serialize)]
struct NotAsked {
    says: String,
}

/// Answers one envelope (JSON text) with one response (JSON text), away from the thread that draws.
#[tauri::command]
async fn ask(opened: State<'_, Arc<Opened>>, envelope: String) -> Result<String, NotAsked> {
    let opened = Arc::clone(&opened);
    let answer = move || opened.0.as_ref().map_err(String::clone)?.ask(&envelope);
    let answered = tauri::async_runtime::spawn_blocking(answer).await;
    answered.unwrap_or_else(|problem| Err(problem.to_string())).map_err(|says| NotAsked { says })
}

/// Opens the window and stays until it is closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    let outcome = builder()
        .plugin(tauri_plugin_dialog::init())
        .plugin(tauri_plugin_fs::init())
        .plugin(tauri_plugin_notification::init())
        .setup(|app| {
            app.manage(Arc::new(Opened(folder(app).and_then(|folder| Edge::open(&folder)))));
            Ok(())
        })
        .invoke_handler(tauri::generate_handler![ask])
        .run(tauri::generate_context!());
    if let Err(problem) = outcome {
        eprintln!("mendline: the window can't be opened: {problem}");
        std::process::exit(1);
    }
}

/// A second start shows the first window, unless it was given a data folder of its own.
#[cfg(desktop)]
fn builder() -> Builder<Wry> {
    if named_folder().is_some() {
        return Builder::default();
    }
    Builder::default().plugin(tauri_plugin_single_instance::init(|app, _arguments, _folder| {
        if let Some(window) = app.get_webview_window("main") {
            let _ = window.unminimize();
            let _ = window.set_focus();
        }
    }))
}

#[cfg(mobile)]
fn builder() -> Builder<Wry> {
    Builder::default().plugin(tauri_plugin_geolocation::init())
}

/// The same folder as `mendline serve` uses, so that both show the same repairs.
#[cfg(desktop)]
fn folder(_app: &App) -> Result<PathBuf, String> {
    named_folder().map_or_else(ports::usual_folder, Ok).map_err(|problem| problem.to_string())
}

#[cfg(mobile)]
fn folder(app: &App) -> Result<PathBuf, String> {
    app.path().app_data_dir().map_err(|problem| problem.to_string())
}

#[cfg(desktop)]
fn named_folder() -> Option<PathBuf> {
    std::env::var_os("MENDLINE_DATA").filter(|folder| !folder.is_empty()).map(PathBuf::from)
}
