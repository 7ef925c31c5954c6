namespace StudioKit.Field.Log;

/// <summary>How far a subject's place is made coarser on export, so that nobody is led to a vulnerable animal or plant.</summary>
public enum PlaceSensitivity
{
    /// <summary>Exported as recorded.</summary>
    Open,

    /// <summary>To a hundredth of a degree, about a kilometre.</summary>
    Hundredth,

    /// <summary>To a tenth of a degree, about ten kilometres.</summary>
    Tenth,

    /// <summary>No place at all but the country.</summary>
    Withheld,
}
