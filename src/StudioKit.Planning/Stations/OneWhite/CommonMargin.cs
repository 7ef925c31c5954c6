namespace StudioKit.Planning.Stations.OneWhite;

/// <summary>Where the common margin of several stations comes from.</summary>
public enum CommonMargin
{
    /// <summary>Somebody asked for it.</summary>
    AskedFor,

    /// <summary>It is the highest that a kit of theirs aims for.</summary>
    Goal,

    /// <summary>It is lower than what the kits aim for, since not all come there.</summary>
    WithinReach,
}
