using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>Where an upright sheet stands in one set-up.</summary>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="FromSubject">Subject to sheet, level.</param>
/// <param name="OnPanel">Whether the subject stands on the panel; else where it grows.</param>
public sealed record UprightPlace(string SetUp, Length FromSubject, bool OnPanel);
