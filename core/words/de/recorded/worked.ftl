### Formulas and sources of the named checks, said again for a reader of another language. Titles of standards stay.

## Formulas
again-worked-formula-ovality = C = ((1 − q)/(1 + q)²)³, q Ovalität als Bruchteil
again-worked-formula-wall = Beulen t = D/((2·K·E_L·C/(P·N·(1 − ν²)))^⅓ + 1); Biegung 1.5·q·(1 + q)·DR² − 0.5·(1 + q)·DR = σ/(P·N); Steifigkeit E/(12·DR³) ≥ 0.093 psi; voll geschädigt q_t = (1/N)·√(32·R_w·B'·E'_s·C·E_L·t³/(12·D³)), 07a mit C vor der Wurzel
again-worked-formula-air_f1417 = T = 0.085·D·K/Q für 1.0 psi, die Hälfte davon für 0.5 psi; K = max(1, 0.000419·D·L); s, in, ft; Anfangsdruck + 0.43 psi/ft Grundwasser über dem Rohr (City Code of Eldridge, Iowa)
again-worked-formula-air_en1610 = t = (1/K_p)·ln(p0/(p0 − Δp)); K_p = 12/DN, trockener Beton 16/DN, höchstens 0.058
again-worked-formula-water_en1610 = V = w·π·DN·L; w 0.15, 0.20 oder 0.40 l/m²
again-worked-formula-laminate = t = n·m_A/(ρ_f·V_f); m = ρ_r·(t − n·m_A/ρ_f)·Breite·Länge
again-worked-formula-working_time = ln t linear über 1/T zwischen zwei Zeilen
again-worked-formula-geodesic = kürzester Weg auf dem Ellipsoid
again-worked-formula-station = Punkt in dieser Entfernung auf dem kürzesten Weg
again-worked-formula-atmosphere = Sauerstoff innerhalb seiner Grenzen; die anderen unter ihren
again-worked-formula-partial_flow = v = R^⅔·√S/n; Q = v·A; Kreisabschnitt
again-worked-formula-surcharge = V = ∫ A(Tiefe − S·x) dx; t = V/Zufluss
again-worked-formula-decay = p' = (p + p_atm)·T₁/T − p_atm; Steigung der Ausgleichsgeraden ± t(0.975; n − 2)·s

## Sources
again-worked-source-ovality = ASTM F1216, X1.2.1, mit der Tabelle gelesen in M. Najafi, Trenchless Technology Piping (2010), Abschn. 2.7
again-worked-source-wall = ASTM F1216, Anhang X1 (Ausgabe im Ergebnis genannt), Formeln gelesen in M. Najafi, Trenchless Technology Piping (2010), Abschn. 2.7; Konstanten in Zoll und Pfund, umgerechnet nach NIST SP 811 (2008)
again-worked-source-air_f1417 = ASTM F1417, Tabelle 2 und ihre Formel, Q = 0.0015 ft³/(min·ft²)
again-worked-source-air_en1610 = EN 1610, Verfahren L, gelesen in den Baufachlichen Richtlinien Abwasser (BFR), Anhang A-2.5.2; 16/DN für trockenen Beton aus dem Gedächtnis
again-worked-source-water_en1610 = EN 1610, Verfahren W, 30 ± 1 min, gelesen als Zitat auf der Seite eines Steinzeugherstellers
again-worked-source-resin_wall = Geometrie eines Zylinders; Zuschlag für Schrumpf und Wanderung, wie ASTM F1216, 7.2 ihn verlangt (aus dem Gedächtnis), seine Größe aus dem Datenblatt
again-worked-source-laminate = Faservolumengehalt nach Definition (Mischungsregel), übliche Praxis
again-worked-source-working_time = Gesetz von Arrhenius: ln t linear über 1/T zwischen zwei Punkten, nie außerhalb (eigene Regel)
again-worked-source-equivalent_age = ASTM C1074, äquivalentes Alter in der Form von Arrhenius, 273.15 K für 0 °C; auf Harz sinngemäß übertragen
again-worked-source-gas = ideales Gas bei gleichem Volumen, p/T konstant mit Absolutdruck und Kelvin
again-worked-source-net = Druck am Manometer minus Süßwasser, 0.0980665 bar/m (NIST SP 811, 2008, B.8)
again-worked-source-end_thrust = Statik, Druck × Fläche; eine Zahl für den Gefahrenbereich, nie eine Bestehensgrenze
again-worked-source-geodesy = C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013), WGS 84, mit der Bibliothek geographiclib-rs
again-worked-source-atmosphere = 29 CFR 1910.146(b) für Sauerstoff und brennbare Gase, dessen Appendix E für die Alarme
again-worked-source-as_given = Grenzen wie angegeben
again-worked-source-left_out = { $given }; was dort fehlt: { $source }
again-worked-source-manning = Gleichung von Manning in SI-Einheiten mit der Geometrie des Kreisabschnitts, übliche Praxis
again-worked-source-storage = Geometrie: Volumen eines Kreisrohrs unter waagrechtem Spiegel, geschlossene Form (Zylinderhuf)
again-worked-source-decay = Ausgleichsgerade durch Ablesungen, nach dem Gasgesetz auf die erste Temperatur gebracht, 95 % nach Students t; 5 Ablesungen und 0.02 bar/h sind eigene Regeln dieses Programms
