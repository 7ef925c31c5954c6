namespace StudioKit.Physics.Light;

/// <summary>Where the light went, as luminous flux times time.</summary>
/// <param name="Emitted">Sent out by the flashes [lm·s].</param>
/// <param name="PanelAbsorbed">Kept or let through by the panel [lm·s].</param>
/// <param name="SkirtsAbsorbed">Kept by the skirts [lm·s].</param>
/// <param name="FloorAbsorbed">Kept by the ground [lm·s].</param>
public sealed record LightBalance(double Emitted, double PanelAbsorbed, double SkirtsAbsorbed, double FloorAbsorbed)
{
    /// <summary>What is not accounted for: light that left an open studio, or the solver's error in a closed one [lm·s].</summary>
    public double Rest => Emitted - PanelAbsorbed - SkirtsAbsorbed - FloorAbsorbed;
}
