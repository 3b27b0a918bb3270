//! Every code with its words: the one place where they stand.

/// A main code.
pub(super) struct Code {
    pub code: &'static str,
    /// The words of the main code.
    pub name: &'static str,
    /// First characterisations whose words take the place of the name.
    pub instead: &'static [(&'static str, &'static str)],
    /// First characterisations whose words follow the name.
    pub first: &'static [(&'static str, &'static str)],
    /// Second characterisations.
    pub second: &'static [(&'static str, &'static str)],
}

const fn code(code: &'static str, name: &'static str) -> Code {
    Code { code, name, instead: &[], first: &[], second: &[] }
}

/// The words of a characterisation that says nothing more.
const SILENT: &str = "";

const RUN: &[(&str, &str)] = &[("A", "lengthwise"), ("B", "round the pipe"), ("C", "branching"), ("D", "spiral")];

const CAUSE: &[(&str, &str)] = &[
    ("A", "by wear or blows"),
    ("B", "by chemical attack"),
    ("C", "by chemical attack in the upper part"),
    ("D", "by chemical attack in the lower part"),
    ("E", "cause not clear"),
    ("Z", "other cause"),
];

const NODES: &[(&str, &str)] = &[
    ("A", "manhole"),
    ("B", "inspection opening"),
    ("C", "cleaning opening"),
    ("D", "lamp shaft"),
    ("E", "outfall"),
    ("F", "junction without manhole"),
    ("X", "structure as the owner defines it"),
    ("Z", "other structure"),
];

const WATER: &[(&str, &str)] = &[
    ("A", "clear"),
    ("B", "code no longer used"),
    ("C", "cloudy"),
    ("D", "coloured"),
    ("E", "cloudy and coloured"),
    ("Y", "look not known"),
    ("YY", "not to be seen"),
];

/// Pipe observations (BAA to BDG) and changes along the line (AEA to AEG).
pub(super) const CODES: &[Code] = &[
    Code {
        first: &[("A", "pressed flat from above"), ("B", "pressed in from the sides"), ("Y", "direction not known")],
        ..code("BAA", "Deformed pipe")
    },
    Code {
        instead: &[("A", "Hairline crack"), ("B", "Crack"), ("C", "Open crack")],
        second: &[
            ("A", "lengthwise"),
            ("B", "round the pipe"),
            ("C", "branching"),
            ("D", "spiral"),
            ("E", "star-shaped"),
            ("Y", "course not known"),
        ],
        ..code("BAB", "Crack")
    },
    Code {
        instead: &[("A", "Broken pipe"), ("B", "Broken pipe, pieces missing"), ("C", "Collapsed pipe")],
        ..code("BAC", "Broken or collapsed pipe")
    },
    Code {
        first: &[("A", "shifted"), ("B", "missing"), ("C", "invert dropped"), ("D", "collapsed")],
        second: &[("A", "next layer visible"), ("B", "nothing visible behind")],
        ..code("BAD", "Brickwork damaged")
    },
    code("BAE", "Mortar missing"),
    Code {
        first: &[
            ("A", "rougher"),
            ("B", "flaking"),
            ("C", "aggregate visible"),
            ("D", "aggregate standing out"),
            ("E", "aggregate lost"),
            ("F", "reinforcement visible"),
            ("G", "reinforcement standing out"),
            ("H", "reinforcement rusted"),
            ("I", "wall missing"),
            ("J", "corrosion on the surface"),
            ("K", "blisters"),
            ("Z", "other damage"),
        ],
        second: CAUSE,
        ..code("BAF", "Surface damaged")
    },
    code("BAG", "Connection standing into the pipe"),
    Code {
        first: &[
            ("A", "in the wrong place"),
            ("B", "set back"),
            ("C", "not fully joined"),
            ("D", "damaged"),
            ("E", "blocked"),
            ("Z", "other fault"),
        ],
        ..code("BAH", "Defective connection")
    },
    Code {
        instead: &[("A", "Sealing ring")],
        first: &[("Z", "other seal")],
        second: &[
            ("A", "moved but not standing in"),
            ("B", "hanging in, not broken"),
            ("C", "standing in, not broken"),
            ("D", "standing in and broken"),
            ("Y", "state not known"),
        ],
        ..code("BAI", "Sealing material standing in")
    },
    Code { first: &[("A", "lengthwise"), ("B", "radial"), ("C", "at an angle")], ..code("BAJ", "Displaced joint") },
    Code {
        instead: &[
            ("A", "Lining detached"),
            ("B", "Lining discoloured"),
            ("C", "Lining end defective"),
            ("D", "Fold in the lining"),
            ("E", "Blister in the lining, inward"),
            ("F", "Bulge in the lining, outward"),
            ("G", "Inner film of the lining coming off"),
            ("H", "Seam cover of the lining coming off"),
            ("I", "Crack or split in the lining"),
            ("J", "Hole in the lining"),
            ("K", "Joint of the lining defective"),
            ("L", "Lining soft"),
            ("M", "Resin missing in the lining"),
            ("N", "Lining end not sealed"),
            ("Z", "Other lining defect"),
        ],
        second: RUN,
        ..code("BAK", "Lining defect")
    },
    Code {
        instead: &[
            ("A", "Repair with wall missing"),
            ("B", "Repaired hole not tight"),
            ("C", "Repair coming off the pipe"),
            ("D", "Repair material missing at the contact face"),
            ("E", "Too much repair material, an obstacle"),
            ("F", "Hole in the repair"),
            ("G", "Crack in the repair"),
            ("Z", "Other repair defect"),
        ],
        second: RUN,
        ..code("BAL", "Defective repair")
    },
    Code { first: &[("A", "lengthwise"), ("B", "round the pipe"), ("C", "spiral")], ..code("BAM", "Weld failed") },
    code("BAN", "Porous pipe"),
    code("BAO", "Soil visible through the defect"),
    code("BAP", "Hollow visible through the defect"),
    Code { first: &[("A", "tap root"), ("B", "fine"), ("C", "mass")], ..code("BBA", "Roots") },
    Code { first: &[("A", "encrusted"), ("B", "grease"), ("C", "slime")], ..code("BBB", "Deposits on the wall") },
    Code { first: &[("A", "fine"), ("B", "coarse"), ("C", "hard or packed")], ..code("BBC", "Deposits in the invert") },
    Code {
        first: &[("A", "sand"), ("B", "peat"), ("C", "fine material"), ("D", "coarse material")],
        ..code("BBD", "Soil coming in")
    },
    Code {
        first: &[
            ("A", "bricks in the invert"),
            ("B", "pipe pieces in the invert"),
            ("C", "object in the invert"),
            ("D", "object through the wall"),
            ("E", "object wedged in a joint"),
            ("F", "object through a connection"),
            ("G", "foreign pipe or cable across"),
            ("H", "object built into the pipe"),
        ],
        ..code("BBE", "Obstacle")
    },
    Code {
        first: &[("A", "sweating"), ("B", "dripping"), ("C", "flowing"), ("D", "gushing")],
        ..code("BBF", "Infiltration")
    },
    code("BBG", "Exfiltration"),
    Code {
        first: &[("A", "rats"), ("B", "cockroaches")],
        second: &[("A", "in the pipe"), ("B", "in a connection"), ("C", "in an open joint"), ("Z", "elsewhere")],
        ..code("BBH", "Vermin")
    },
    Code {
        first: &[
            ("A", "branch piece"),
            ("B", "saddle, drilled"),
            ("C", "saddle, chiselled"),
            ("D", "plain, drilled"),
            ("E", "plain, chiselled"),
            // The table only points to a national guideline here.
            ("F", "special kind"),
            ("G", "kind not known"),
        ],
        second: &[("A", "open"), ("B", "closed")],
        ..code("BCA", "Connection")
    },
    Code {
        first: &[
            ("A", "pipe replaced"),
            ("B", "local lining"),
            ("C", "mortar injected"),
            ("D", "sealant injected"),
            ("E", "hole repaired"),
            ("F", "local lining of the connection"),
            ("G", "other repair of the connection"),
            ("Z", "other repair without digging"),
        ],
        ..code("BCB", "Point repair")
    },
    Code {
        first: &[("A", "to the left"), ("B", "to the right"), ("Y", SILENT)],
        second: &[("A", "upward"), ("B", "downward"), ("Y", SILENT)],
        ..code("BCC", "Bend in the line")
    },
    Code { first: NODES, second: &[("P", SILENT)], ..code("BCD", "Start node") },
    Code { first: NODES, second: &[("P", SILENT)], ..code("BCE", "Finish node") },
    code("BDA", "General photo"),
    code("BDB", "General remark"),
    Code {
        first: &[("A", "obstacle"), ("B", "high water"), ("C", "equipment failed"), ("Z", "other reason")],
        second: &[
            ("A", "aim reached before the end"),
            ("B", "on the owner's word"),
            ("C", "complete with an earlier run"),
            ("D", "not complete with an earlier run"),
            ("E", "not known whether complete with an earlier run"),
            ("Z", "other state"),
        ],
        ..code("BDC", "Inspection given up")
    },
    Code { first: WATER, ..code("BDD", "Water level") },
    Code {
        first: WATER,
        second: &[
            ("A", "foul water into a storm drain"),
            ("B", "storm water into a foul sewer"),
            ("C", "no wrong connection seen"),
            ("Y", "whether wrongly connected not known"),
        ],
        ..code("BDE", "Inflow from a connection")
    },
    Code {
        first: &[("A", "lack of oxygen"), ("B", "hydrogen sulphide"), ("C", "methane"), ("Z", "other gas")],
        ..code("BDF", "Hazardous atmosphere in the pipe")
    },
    Code {
        first: &[("A", "camera under water"), ("B", "silt"), ("C", "steam or fog"), ("Z", "other reason")],
        ..code("BDG", "No sight")
    },
    code("AEA", "New video medium"),
    code("AEB", "New photo folder"),
    Code { first: SHAPES, ..code("AEC", "Change of shape") },
    Code { first: MATERIALS, ..code("AED", "Change of material") },
    code("AEE", "Change of lining"),
    code("AEF", "Change of pipe unit length"),
    code("AEG", "Change of rain"),
];

/// Shapes: ACA and AEC.
pub(super) const SHAPES: &[(&str, &str)] = &[
    ("A", "round"),
    ("B", "rectangular"),
    ("C", "egg-shaped"),
    ("D", "U-shaped"),
    ("E", "arched"),
    ("F", "oval"),
    ("X", "local shape"),
    ("Y", "shape not known"),
    ("Z", "other shape"),
];

/// Uses: ACK. From memory of EN 13508-2:2003+A1:2011, Annex C.
pub(super) const USES: &[(&str, &str)] = &[
    ("A", "foul sewer"),
    ("B", "surface water sewer"),
    ("C", "combined sewer"),
    ("D", "trade effluent sewer"),
    ("E", "culverted watercourse"),
];

/// Materials: ACD and AED.
pub(super) const MATERIALS: &[(&str, &str)] = &[
    ("AA", "asbestos cement"),
    ("AB", "bitumen"),
    ("AC", "pitch fibre"),
    ("AD", "brickwork"),
    ("AE", "vitrified clay"),
    ("AF", "cement mortar"),
    ("AG", "concrete"),
    ("AH", "reinforced concrete"),
    ("AI", "sprayed concrete"),
    ("AJ", "concrete segments"),
    ("AK", "fibre cement"),
    ("AL", "fibre-reinforced plastic"),
    ("AM", "cast iron"),
    ("AN", "grey cast iron"),
    ("AO", "ductile iron"),
    ("AP", "steel"),
    ("AQ", "iron or steel, kind not known"),
    ("AR", "coursed masonry"),
    ("AS", "uncoursed masonry"),
    ("AT", "epoxy"),
    ("AU", "polyester"),
    ("AV", "polyethylene"),
    ("AW", "polypropylene"),
    ("AX", "PVC-U"),
    ("AY", "plastic, kind not known"),
    ("AZ", "material not known"),
    ("Y", "material not known"),
    ("Z", "other material"),
];

/// How the first quantification of a code is said.
pub(super) struct Quantity {
    pub code: &'static str,
    /// First characterisations that it holds for; empty for all.
    pub first: &'static [&'static str],
    pub before: &'static str,
    pub behind: &'static str,
}

const fn quantity(code: &'static str, before: &'static str, behind: &'static str) -> Quantity {
    Quantity { code, first: &[], before, behind }
}

/// Units of the first quantification, from memory of EN 13508-2, chapter 8; the code tables do not hold them.
pub(super) const QUANTITIES: &[Quantity] = &[
    quantity("BAA", "by ", " %"),
    quantity("BAB", "", " mm wide"),
    quantity("BAC", "", " mm long"),
    quantity("BAG", "by ", " % of the height"),
    quantity("BAI", "", " % of the section"),
    Quantity { first: &["A", "B"], ..quantity("BAJ", "by ", " mm") },
    Quantity { first: &["C"], ..quantity("BAJ", "by ", "°") },
    quantity("BBA", "", " % of the section"),
    quantity("BBB", "", " % of the section"),
    quantity("BBC", "", " % of the height"),
    quantity("BCA", "DN ", ""),
    quantity("BCC", "by ", "°"),
    quantity("BDD", "", " % of the height"),
];
