//! Tables: rows never split, the head repeats with "(continued)", no row stands alone.

use super::flow::Heading;
use super::grid::{self, Align, ROW, SMALL, TINY, rule};
use super::sheet::Sheet;
use crate::certificate::display::{Pen, Role};
use crate::words::{say, tell};

/// Between a cell and the next.
const GAP: f64 = 2.0;
/// The height of a head, with its rule.
const HEAD: f64 = 5.4;
/// Around the lines of a row.
const AIR: f64 = 1.2;

/// A column.
pub struct Column {
    /// Its message.
    pub title: &'static str,
    pub width: f64,
    pub align: Align,
}

/// Returns a column that is set from the left.
pub const fn left(title: &'static str, width: f64) -> Column {
    Column { title, width, align: Align::Left }
}

/// Returns a column that is set from the right: numbers.
pub const fn right(title: &'static str, width: f64) -> Column {
    Column { title, width, align: Align::Right }
}

/// A row of texts, one for each column; the first stands bold.
pub struct Row {
    pub cells: Vec<String>,
    /// A further cell that stands bold.
    pub bold: Option<usize>,
}

impl Row {
    pub fn of(cells: Vec<String>) -> Self {
        Self { cells, bold: None }
    }
}

/// A table with its heading.
pub struct Table<'a> {
    pub key: &'static str,
    pub remark: &'a str,
    pub columns: &'a [Column],
}

impl Table<'_> {
    /// Sets heading and table below the cursor; nothing where there is no row.
    pub fn set(&self, sheet: &mut Sheet, rows: &[Row]) {
        let rows: Vec<Wrapped> = rows.iter().flat_map(|row| self.wrapped(sheet, row)).collect();
        if rows.is_empty() {
            return;
        }
        let first: f64 = rows.iter().take(2).map(Wrapped::height).sum();
        let keep = (HEAD + first + 1.6).min(sheet.height / 2.0);
        Heading { key: self.key, remark: self.remark, keep }.set(sheet);
        sheet.element(Role::Table, |sheet| self.rows(sheet, &rows));
        sheet.line((grid::LEFT, sheet.y + 0.6), (grid::RIGHT, sheet.y + 0.6), Pen::black(rule::FINE));
        sheet.y += 1.4;
    }

    fn rows(&self, sheet: &mut Sheet, rows: &[Wrapped]) {
        sheet.element(Role::Tr, |sheet| self.head(sheet, false));
        for (index, row) in rows.iter().enumerate() {
            let last_pair = index + 2 == rows.len();
            let company = if last_pair { rows[index + 1].height() } else { 0.0 };
            if sheet.need(row.height() + company) {
                sheet.decorate(|sheet| self.head(sheet, true));
            }
            sheet.element(Role::Tr, |sheet| self.row(sheet, row));
            if index + 1 < rows.len() {
                let y = sheet.y + 0.35;
                sheet.line((grid::LEFT, y), (grid::RIGHT, y), Pen::black(rule::ROW).grey(rule::ROW_GREY));
            }
        }
    }

    fn head(&self, sheet: &mut Sheet, continued: bool) {
        sheet.y += grid::LINE;
        let y = sheet.y;
        let widest = self.columns.iter().position(|column| column.width >= 25.0).unwrap_or(0);
        for (index, (column, x)) in self.columns.iter().zip(self.edges()).enumerate() {
            let title = say(column.title, &[]);
            let more = continued && index == widest;
            let title = if more { tell!("cert-tables-continued", title) } else { title };
            sheet.element(Role::Th, |sheet| sheet.text(x, y, &title, TINY.bold().at(column.align)));
        }
        sheet.rule(y + 1.3, rule::HEAD);
        sheet.y += 1.4;
    }

    fn row(&self, sheet: &mut Sheet, row: &Wrapped) {
        let top = sheet.y;
        for (index, (lines, x)) in row.cells.iter().zip(self.edges()).enumerate() {
            let style = SMALL.bold_if(index == 0 || row.bold == Some(index)).at(self.columns[index].align);
            let role = if index == 0 { Role::ThRow } else { Role::Td };
            sheet.element(role, |sheet| sheet.lines_at(x, top + ROW, lines, style));
        }
        sheet.y = top + row.height();
    }

    /// The x at which each column is set.
    fn edges(&self) -> Vec<f64> {
        let mut x = grid::LEFT;
        let last = self.columns.len().saturating_sub(1);
        let edge = |(index, column): (usize, &Column)| {
            let left = x;
            x += column.width;
            match column.align {
                Align::Left | Align::Centre => left,
                Align::Right => x - if index == last { 0.0 } else { GAP },
            }
        };
        self.columns.iter().enumerate().map(edge).collect()
    }

    /// Returns a row in lines; one that no page could hold is cut into several.
    fn wrapped(&self, sheet: &Sheet, row: &Row) -> Vec<Wrapped> {
        let last = self.columns.len().saturating_sub(1);
        let cells: Vec<Vec<String>> = self
            .columns
            .iter()
            .zip(&row.cells)
            .enumerate()
            .map(|(index, (column, text))| {
                let gap = if index == last { 0.0 } else { GAP };
                let style = SMALL.bold_if(index == 0 || row.bold == Some(index));
                sheet.wrap(text, column.width - gap, style)
            })
            .collect();
        let most = ((sheet.height - grid::TOP - grid::FOOT - HEAD - 6.0 - AIR) / ROW).floor().max(1.0) as usize;
        let lines = cells.iter().map(Vec::len).max().unwrap_or(0);
        let part = |from: usize| Wrapped {
            cells: cells.iter().map(|lines| lines.iter().skip(from).take(most).cloned().collect()).collect(),
            bold: row.bold,
        };
        (0..lines.max(1)).step_by(most).map(part).collect()
    }
}

/// A row in lines.
struct Wrapped {
    cells: Vec<Vec<String>>,
    bold: Option<usize>,
}

impl Wrapped {
    fn height(&self) -> f64 {
        self.cells.iter().map(Vec::len).max().unwrap_or(0) as f64 * ROW + AIR
    }
}
