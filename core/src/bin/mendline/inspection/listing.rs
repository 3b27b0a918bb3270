//! The file as a list to read: each line with its nodes, each observation with its distance from both.

use mendline_core::inspection::{Direction, Inspection, InspectionFile, Observation, words};
use mendline_core::units::Length;

/// Returns the list.
pub fn print(file: &InspectionFile) -> String {
    let rows: usize = file.inspections.iter().map(|i| i.observations.len()).sum();
    let mut out = format!("{}, {}\n", count(file.inspections.len(), "inspection"), count(rows, "observation"));
    for inspection in &file.inspections {
        out.push('\n');
        out.push_str(&head(inspection));
        out.push_str(&observations(inspection));
    }
    out
}

fn count(number: usize, word: &str) -> String {
    format!("{number} {word}{}", if number == 1 { "" } else { "s" })
}

fn head(i: &Inspection) -> String {
    let known = |text: &Option<String>| text.as_deref().unwrap_or("not named").to_owned();
    let place = [&i.street, &i.town].into_iter().flatten().cloned();
    let title: Vec<String> = std::iter::once(format!("Line {}", known(&i.line))).chain(place).collect();
    let way = match i.direction {
        Some(Direction::WithFlow) => "downstream, with the flow",
        Some(Direction::AgainstFlow) => "upstream, against the flow",
        None => "direction not known",
    };
    let mut nodes = format!("  From {} to {}, {way}", known(&i.start_node), known(&i.end_node));
    if let (Some(upper), Some(lower)) = (i.upstream_node(), i.downstream_node()) {
        nodes.push_str(&format!("; {upper} is the upper node, {lower} the lower one"));
    }
    let lines = [title.join(", "), nodes, format!("  {}", facts(i).join(", "))];
    lines.map(|line| one_line(&line) + "\n").concat()
}

fn facts(i: &Inspection) -> Vec<String> {
    let mut facts = Vec::new();
    facts.push(i.run_length().map_or_else(|| "length not known".into(), |l| format!("{} m", metres(l))));
    facts.extend(i.height_um.map(|height| format!("{} mm high", height.as_mm())));
    facts.extend(i.shape.as_deref().map(words::shape));
    facts.extend(i.material.as_deref().map(words::material));
    facts.extend(i.date.map(|date| format!("inspected {date}")));
    facts.extend(i.time.map(|time| time.format("%H:%M").to_string()));
    facts.extend(i.inspector.as_ref().map(|name| format!("by {name}")));
    facts
}

fn observations(inspection: &Inspection) -> String {
    if inspection.observations.is_empty() {
        return "  No observations.\n".to_owned();
    }
    let looking = match inspection.direction {
        Some(Direction::WithFlow) => "downstream",
        Some(Direction::AgainstFlow) => "upstream",
        None => "the way the camera went",
    };
    let ends = match inspection.direction {
        None => [inspection.start_node.as_deref().unwrap_or("start"), inspection.end_node.as_deref().unwrap_or("end")],
        Some(_) => {
            [inspection.upstream_node().unwrap_or("upper node"), inspection.downstream_node().unwrap_or("lower node")]
        }
    };
    let ends = ends.map(|end| format!("from {end}, m"));
    let widths = ends.each_ref().map(|end| end.chars().count());
    let [near, far] = &ends;
    let mut out = one_line(&format!("  {near}  {far}  {:<9}  clock hours are seen looking {looking}", "code"));
    out.push('\n');
    for (observation, note) in inspection.observations.iter().zip(stretch_notes(inspection)) {
        out.push_str(&one_line(&line(inspection, observation, note, widths)));
        out.push('\n');
    }
    out
}

fn line(
    inspection: &Inspection,
    o: &Observation,
    stretch: Option<String>,
    [near_width, far_width]: [usize; 2],
) -> String {
    let code = [Some(o.code.as_str()), o.char1.as_deref(), o.char2.as_deref()];
    let code = code.into_iter().flatten().collect::<Vec<_>>().join(" ");
    let (near, far) = stations(inspection, o.station_um);
    let mut said = vec![words::describe(o)];
    said.extend(o.at_joint.filter(|at| *at).map(|_| "at a joint".to_owned()));
    said.extend(stretch);
    said.extend(o.remark.as_ref().map(|remark| format!("“{}”", remark.trim())));
    format!("  {near:>near_width$}  {far:>far_width$}  {code:<9}  {}", said.join(", "))
}

/// Returns the distances from upper and lower node; without a direction from start and end.
fn stations(inspection: &Inspection, station: Option<Length>) -> (String, String) {
    let said = |length: Option<Length>| length.map_or_else(|| "–".to_owned(), metres);
    let Some(station) = station else {
        return (said(None), said(None));
    };
    match inspection.direction {
        Some(_) => {
            let upper = inspection.station_from_upstream(station);
            (said(upper), said(inspection.station_from_downstream(station)))
        }
        None => (metres(station), said(inspection.station_from_end(station))),
    }
}

/// Returns for each row what it says of a continuous defect.
fn stretch_notes(inspection: &Inspection) -> Vec<Option<String>> {
    let stretches = inspection.stretches();
    let mut notes = vec![None; inspection.observations.len()];
    let mut note = |row: usize, text: String| {
        if let Some(place) = notes.get_mut(row) {
            *place = Some(text);
        }
    };
    let station = |row: usize| {
        let station = inspection.observations.get(row).and_then(|o| o.station_um);
        station.map_or_else(|| "–".to_owned(), metres)
    };
    for stretch in &stretches.whole {
        let number = stretch.number;
        note(stretch.start, format!("stretch {number} begins, to station {} m", station(stretch.end)));
        note(stretch.end, format!("stretch {number} ends, from station {} m", station(stretch.start)));
    }
    for row in &stretches.broken {
        note(*row, "one end of a stretch, the other is missing".to_owned());
    }
    notes
}

fn metres(length: Length) -> String {
    format!("{:.2}", length.as_m())
}

/// Returns the text with control characters that came from the file, line ends too, as spaces.
fn one_line(text: &str) -> String {
    text.replace(char::is_control, " ")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn list(direction: &str, remark: &str) -> String {
        let file = format!(
            "#A1=UTF-8\n#A3=;\n#A4=.\n#A5=\"\n#B01=AAA;AAB;AAD;AAF;AAK;ABQ\nSS-1;MH 2;MH 1;MH 2;{direction};12.50\n\
             #C=I;J;A;B;C;G;H;F\n7.12;A1;BAB;B;A;11;1;{remark}\n7.40;B1;BAB;B;A;12;12\n8;A2;BBA\n#Z\n"
        );
        print(&mendline_core::inspection::read(file.as_bytes()).unwrap())
    }

    #[test]
    fn each_observation_stands_with_both_distances_and_its_words() {
        let expected = "1 inspection, 3 observations\n\nLine SS-1\n\
            \x20 From MH 2 to MH 1, upstream, against the flow; MH 1 is the upper node, MH 2 the lower one\n  12.50 m\n\
            \x20 from MH 1, m  from MH 2, m  code       clock hours are seen looking upstream\n\
            \x20         5.38          7.12  BAB B A    Crack, lengthwise, from 11 to 1 o'clock, \
            stretch 1 begins, to station 7.40 m, “beside the tap”\n\
            \x20         5.10          7.40  BAB B A    Crack, lengthwise, from 12 to 12 o'clock \
            (all round, or one spot?), stretch 1 ends, from station 7.12 m\n\
            \x20         4.50          8.00  BBA        Roots, one end of a stretch, the other is missing\n";
        assert_eq!(list("B", "beside the tap"), expected);
    }

    #[test]
    fn without_a_direction_distances_are_from_start_and_end() {
        let list = list("", "");
        assert!(list.contains("direction not known\n"), "{list}");
        assert!(list.contains("from MH 2, m  from MH 1, m"), "{list}");
        assert!(list.contains("7.12          5.38  BAB"), "{list}");
    }

    #[test]
    fn a_terminal_sees_no_control_characters_of_a_file() {
        assert!(list("A", "tab\there").contains("“tab here”"));
    }
}
