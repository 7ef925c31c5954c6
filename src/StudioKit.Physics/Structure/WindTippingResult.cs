using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>How safely a studio stands in the wind.</summary>
/// <param name="Pressure">Dynamic pressure of the gust.</param>
/// <param name="Force">Push of the wind.</param>
/// <param name="Overturning">Moment of the wind about the feet on the lee side.</param>
/// <param name="Holding">Moment of weight and pegs about them.</param>
/// <param name="Safety">Holding over overturning moment [1]; none where there is no wind.</param>
/// <param name="TippingSpeed">Gust that tips it; none where nothing catches the wind.</param>
/// <param name="BallastAtCentre">Mass to add under the mass centre for the safety factor.</param>
/// <param name="BallastAtWindwardFeet">Mass to put on the windward feet instead.</param>
/// <param name="SlidingSafety">Friction and pegs over push [1]; none where there is no wind.</param>
/// <param name="BallastAgainstSliding">Mass to add so that it does not slide at the same safety factor.</param>
public sealed record WindTippingResult(
    Pressure Pressure,
    Force Force,
    Torque Overturning,
    Torque Holding,
    double? Safety,
    Speed? TippingSpeed,
    Mass BallastAtCentre,
    Mass BallastAtWindwardFeet,
    double? SlidingSafety,
    Mass BallastAgainstSliding);
