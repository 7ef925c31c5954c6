using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Where a flash behind an upright sheet stands.</summary>
/// <param name="Flash">Name of the flash.</param>
/// <param name="Modifier">Name of the modifier before it; none where it is bare.</param>
/// <param name="Distance">Bright window to the sheet, square to it.</param>
/// <param name="Right">How far right of the sheet's middle it stands, as the camera sees it.</param>
/// <param name="BehindSubject">How far behind the subject's foot it stands, level.</param>
/// <param name="OverGround">Middle of its window over the ground, or over the panel where the frame carries the sheet.</param>
/// <param name="Tilt">How far it is tilted up from level, negative down, to be aimed at the sheet behind the subject.</param>
/// <param name="Turn">How far it is turned towards the right as the camera sees it, negative to the left.</param>
public sealed record FlashBehindPlan(string Flash, string? Modifier, Length Distance, Length Right, Length BehindSubject, Length OverGround, Angle Tilt, Angle Turn);
