//! The files of `ui/`, carried inside the binary.

static FILES: &[(&str, &[u8])] = include!(concat!(env!("OUT_DIR"), "/ui.rs"));

/// Browsers ask for it by this name, whatever the page says.
const ICON: &[u8] = include_bytes!("../../../../src-tauri/icons/32x32.png");

/// Returns the bytes and the media type of the file that the screens call `path`, if there is one.
///
/// The path is looked up among the names, never on the disk.
pub fn file(path: &str) -> Option<(&'static [u8], &'static str)> {
    if path == "/favicon.ico" {
        return Some((ICON, "image/png"));
    }
    let name = if path == "/" { "/index.html" } else { path };
    let (name, bytes) = FILES.iter().find(|(known, _)| *known == name)?;
    Some((*bytes, media_type(name)?))
}

fn media_type(name: &str) -> Option<&'static str> {
    Some(match name.rsplit_once('.')?.1 {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "json" => "application/json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "jpg" => "image/jpeg",
        "ico" => "image/x-icon",
        "woff2" => "font/woff2",
        "ttf" => "font/ttf",
        "txt" => "text/plain; charset=utf-8",
        "mp3" => "audio/mpeg",
        "wav" => "audio/wav",
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_file_of_the_screens_can_be_sent() {
        assert!(file("/").is_some());
        for (name, bytes) in FILES {
            assert_eq!(file(name).map(|(sent, _)| sent), Some(*bytes), "{name} has no known media type");
        }
    }

    #[test]
    fn nothing_but_the_screens_is_carried() {
        for (name, _) in FILES {
            let foreign =
                ["node_modules", "/test", ".test.", "package", ".map", "/."].iter().any(|part| name.contains(part));
            assert!(!foreign, "{name} does not belong in ui/");
        }
    }
}
