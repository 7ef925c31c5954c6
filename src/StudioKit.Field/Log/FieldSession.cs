namespace StudioKit.Field.Log;

/// <summary>One outing: a place, a time and the people there.</summary>
public sealed record FieldSession
{
    /// <summary>Identifier, unique for good; given by the log where it is empty.</summary>
    public string Id { get; init; } = "";

    /// <summary>Name in the photographer's own notes.</summary>
    public string Name { get; init; } = "";

    /// <summary>When it began: a moment, or a day where no more is known.</summary>
    public required FieldDate Start { get; init; }

    /// <summary>When it ended; none while it goes on.</summary>
    public FieldDate? End { get; init; }

    /// <summary>The place in words.</summary>
    public string Locality { get; init; } = "";

    /// <summary>Country as a two-letter code of ISO 3166-1; empty where it is not given.</summary>
    public string CountryCode { get; init; } = "";

    /// <summary>Habitat in words.</summary>
    public string Habitat { get; init; } = "";

    /// <summary>Latitude on WGS 84 [°]; −90 to 90.</summary>
    public double? Latitude { get; init; }

    /// <summary>Longitude on WGS 84 [°]; −180 to 180.</summary>
    public double? Longitude { get; init; }

    /// <summary>Radius of the circle that holds the place [m]; above 0, none where it is unknown.</summary>
    public double? CoordinateUncertainty { get; init; }

    /// <summary>Height above sea level [m].</summary>
    public double? Elevation { get; init; }

    /// <summary>Who was there and recorded, in order.</summary>
    public IReadOnlyList<string> RecordedBy { get; init; } = [];

    /// <summary>How the subjects were found and portrayed.</summary>
    public string SamplingProtocol { get; init; } = "";

    /// <summary>Anything else.</summary>
    public string Remarks { get; init; } = "";
}
