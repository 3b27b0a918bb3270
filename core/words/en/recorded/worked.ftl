### Formulas and sources of the named checks, said again for a reader of another language. Titles of standards stay.

## Formulas
again-worked-formula-ovality = C = ((1 − q)/(1 + q)²)³, q ovality as a fraction
again-worked-formula-wall = buckling t = D/((2·K·E_L·C/(P·N·(1 − ν²)))^⅓ + 1); bending 1.5·q·(1 + q)·DR² − 0.5·(1 + q)·DR = σ/(P·N); stiffness E/(12·DR³) ≥ 0.093 psi; full q_t = (1/N)·√(32·R_w·B'·E'_s·C·E_L·t³/(12·D³)), 07a with C before the root
again-worked-formula-air_f1417 = T = 0.085·D·K/Q for 1.0 psi, half of it for 0.5 psi; K = max(1, 0.000419·D·L); s, in, ft; start + 0.43 psi/ft of groundwater above the pipe (City Code of Eldridge, Iowa)
again-worked-formula-air_en1610 = t = (1/K_p)·ln(p0/(p0 − Δp)); K_p = 12/DN, dry concrete 16/DN, at most 0.058
again-worked-formula-water_en1610 = V = w·π·DN·L; w 0.15, 0.20 or 0.40 l/m²
again-worked-formula-laminate = t = n·m_A/(ρ_f·V_f); m = ρ_r·(t − n·m_A/ρ_f)·width·length
again-worked-formula-working_time = ln t straight against 1/T between two rows
again-worked-formula-geodesic = shortest way on the ellipsoid
again-worked-formula-station = point at that distance along the shortest way
again-worked-formula-atmosphere = oxygen inside its limits; the others below theirs
again-worked-formula-partial_flow = v = R^⅔·√S/n; Q = v·A; segment of a circle
again-worked-formula-surcharge = V = ∫ A(depth − S·x) dx; t = V/inflow
again-worked-formula-decay = p' = (p + p_atm)·T₁/T − p_atm; slope of the least-squares line ± t(0.975; n − 2)·s

## Sources
again-worked-source-ovality = ASTM F1216, X1.2.1, read with its table in M. Najafi, Trenchless Technology Piping (2010), sec. 2.7
again-worked-source-wall = ASTM F1216, appendix X1 (edition named in the result), formulas read in M. Najafi, Trenchless Technology Piping (2010), sec. 2.7; inch-pound constants, converted by NIST SP 811 (2008)
again-worked-source-air_f1417 = ASTM F1417, table 2 and its formula, Q = 0.0015 ft³/(min·ft²)
again-worked-source-air_en1610 = EN 1610, method L, read in the German federal guideline BFR Abwasser, annex A-2.5.2; 16/DN for dry concrete is from memory
again-worked-source-water_en1610 = EN 1610, method W, 30 ± 1 min, read as quoted by a clay pipe maker's page
again-worked-source-resin_wall = geometry of a cylinder; excess for shrinkage and migration as ASTM F1216, 7.2 asks for (from memory), its size is the sheet's
again-worked-source-laminate = fibre volume fraction by definition (rule of mixtures), common practice
again-worked-source-working_time = Arrhenius rate law: ln t straight against 1/T between two points, never outside (design rule)
again-worked-source-equivalent_age = ASTM C1074, equivalent age in its Arrhenius form, 273.15 K for 0 °C; used for resin by analogy
again-worked-source-gas = ideal gas at constant volume, p/T constant with absolute pressure and kelvin
again-worked-source-net = gauge pressure less fresh water, 0.0980665 bar/m (NIST SP 811, 2008, B.8)
again-worked-source-end_thrust = statics, pressure × area; a danger-zone number, never a pass mark
again-worked-source-geodesy = C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013), WGS 84, by the geographiclib-rs library
again-worked-source-atmosphere = 29 CFR 1910.146(b) for oxygen and flammables, its Appendix E for the alarms
again-worked-source-as_given = limits as given
again-worked-source-left_out = { $given }; what it leaves out: { $source }
again-worked-source-manning = Manning's equation in SI units with the geometry of a circular segment, common practice
again-worked-source-storage = geometry: volume of a circular pipe below a level surface, closed form (cylindrical wedge)
again-worked-source-decay = straight line by least squares through readings brought to the first temperature by the gas law, 95 % by Student's t; 5 readings and 0.02 bar/h are design rules of this project
