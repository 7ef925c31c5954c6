using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Expected;

/// <summary>What was set when a reading was taken or a test frame shot.</summary>
/// <param name="Power">Power of the flash.</param>
/// <param name="Distance">Bright window to panel for a flash below, to meter or subject for all others; as in the set-up where none is given.</param>
/// <param name="Aperture">f-number set on the lens; as planned where none is given.</param>
/// <param name="Iso">ISO speed; as planned where none is given.</param>
public sealed record ShotSettings(FlashPower Power, Length? Distance = null, FNumber? Aperture = null, IsoSpeed? Iso = null);
