using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Planning;

/// <summary>What an exposure may spoil although it keeps every limit; one of the forms below.</summary>
/// <param name="Seen">As what it shows on the camera's display: the card's advice against that says what to turn.</param>
public abstract record ExposureWarning(Symptom Seen)
{
    /// <summary>Light from below eats legs and hairs.</summary>
    /// <param name="Uplight">Light on the underside against the lights above.</param>
    /// <param name="From">Light from which legs and hairs are eaten.</param>
    public sealed record EatsLegs(Stops Uplight, Stops From) : ExposureWarning(Symptom.EatenLegs);

    /// <summary>Light of the sheet behind eats edges.</summary>
    /// <param name="Edge">The edge that gets most of it.</param>
    /// <param name="From">Light from which edges are eaten.</param>
    public sealed record EatsEdges(LimbSpill Edge, Stops From) : ExposureWarning(Symptom.EatenEdges);
}
