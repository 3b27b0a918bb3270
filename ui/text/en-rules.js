// English: a rule in two or three words, as a table or a list names it. The sentence with its values comes from the core.

const NAMES = {
  plan_missing: "No plan", choice_missing: "Nothing chosen", cover_short: "Cover short", diameter_outside_packer: "Outside the packer’s range", diameter_outside_patch: "Outside the patch’s range",
  patch_outside_line: "Patch beyond the line", patch_longer_than_packer: "Patch longer than the packer", rods_dont_turn: "Rods don’t turn", too_short_to_bind: "Too short to bind",
  membrane_in_bend: "Membrane in a bend", membrane_short: "Membrane short", pressure_not_named: "Pressure not named", window_empty: "No pressure fits", outside_sheet: "Outside the data sheet",
  batch_too_large: "Batch too large", no_time: "Time too short", closure_before_hold_end: "Closure ends too early", storage_short: "Line above full too early", temperatures_old: "Temperatures old", temperatures_missing: "Temperatures missing",
  branch_open: "Devices apart", task_open: "Tasks open", task_not_right: "Not right", not_suitable: "Not for a patch", resin_expired: "Resin out of date", storage_outside: "Stored outside the sheet", air_alarm: "Air alarm", air_old: "Air reading old",
  diameter_differs: "Diameter differs from the plan", packer_test_short: "Packer test short", packer_leaks: "Packer leaks", instrument_overdue: "Calibration overdue", cleaning_old: "Viewed late",
  mark_not_reached: "Mark not reached", packer_not_back: "Packer not back", bare_end_short: "Bare end short", bare_ends_unequal: "Bare ends unequal", go_missing: "No second go",
  joined_without_go: "Joined without a go", joined_expired: "Joined against a rule", ratio_outside: "Ratio outside", mixing_short: "Mixed too short", late_fill_in: "Filled in later", centre_shifted: "Patch shifted",
  late_inflation: "Inflated late", late_tap_in_favour: "Late tap in favour", pressure_lost: "Pressure lost", window_missed: "Out of the window", hold_short: "Hold short", sample_soft: "Sample soft", sample_missing: "Sample not felt",
  reading_copied: "Reading looks copied", hold_not_covered: "Colder than the hold table", released_early: "Released early", pulled_by_rods: "Pulled by the rods", left_behind: "Something missing", packer_damaged: "Packer damaged",
  trouble_reported: "Trouble reported", edge_lifted: "Edge lifted", fold_high: "Fold too high", water_comes: "Water comes in", surface_not_sound: "Surface not sound", lateral_covered: "Lateral covered",
  lateral_opening: "Lateral opening", lateral_cut_early: "Lateral opened early", coupon_missing: "Coupon missing", tested_early: "Tested early", tightness_missing: "Tightness not tested", not_tight: "Not tight", photo_missing: "Photo missing",
  new_attempt_asked: "New attempt asked", departure_open: "Departures open", foreman_needed: "Foreman needed", person_missing: "Nobody picked", reason_missing: "Reason missing", not_certain: "Not certain",
  signature_missing: "Signature missing", signature_empty: "Nothing drawn", not_complete: "Not complete", rehearsal_only: "Rehearsal only", out_of_order: "Not at this stage", stage_order: "Repair is closed", bad_value: "Value not right",
  far_from_node: "Far from the node", clock_set: "Clock was set",
};

export const rules = Object.fromEntries(Object.entries(NAMES).map(([code, name]) => [`rule.${code}`, name]));
