//! The worked example, told by the rules of the procedure and derived into content.

mod kit;
mod plan;
mod story;

#[test]
fn prints() {
    let content = story::mended().content().unwrap();
    println!("{}", serde_json::to_string_pretty(&content).unwrap());
}
