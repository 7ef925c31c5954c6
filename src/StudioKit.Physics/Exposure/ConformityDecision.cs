namespace StudioKit.Physics.Exposure;

/// <summary>What a measurement decides about a tolerance.</summary>
public enum ConformityDecision
{
    /// <summary>Within it for all that the measurement leaves open.</summary>
    Within,

    /// <summary>The measurement's uncertainty straddles a limit, so that it proves neither.</summary>
    NotDecided,

    /// <summary>Outside it for all that the measurement leaves open.</summary>
    Outside,
}
