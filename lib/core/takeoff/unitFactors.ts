/**
 * Units of the trade in metric ones. All but the last two lines' products are exact by definition (1 in = 25.4 mm,
 * 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s², 1 US gal = 231 in³; NIST SP 811, appendix B).
 */
export const millimetresPerInch = 25.4
export const millimetresPerFoot = 304.8
export const millimetresPerYard = 914.4
export const kilogramsPerPound = 0.45359237
export const newtonsPerPoundForce = 4.4482216152605
export const litresPerCubicFoot = 28.316846592
export const litresPerCubicYard = 764.554857984
export const litresPerUsGallon = 3.785411784
export const squareMetresPerSquareFoot = 0.09290304
export const squareMetresPerAcre = 4046.8564224
export const metresPerSecondPerMileAnHour = 0.44704
export const kilogramsPerMetrePerPoundPerFoot = kilogramsPerPound / 0.3048
export const kilogramsPerCubicMetrePerPoundPerCubicFoot = kilogramsPerPound / 0.028316846592
export const pascalsPerPoundPerSquareFoot = newtonsPerPoundForce / squareMetresPerSquareFoot
