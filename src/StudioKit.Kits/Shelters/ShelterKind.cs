namespace StudioKit.Kits.Shelters;

/// <summary>What is put up against sun or wind.</summary>
public enum ShelterKind
{
    /// <summary>An umbrella: a round shade.</summary>
    Umbrella,

    /// <summary>A cloth stretched over the place: a four-sided shade.</summary>
    ShadeCloth,

    /// <summary>An upright screen on the windward side.</summary>
    WindBreak,
}
