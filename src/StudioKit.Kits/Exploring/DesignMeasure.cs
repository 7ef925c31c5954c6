namespace StudioKit.Kits.Exploring;

/// <summary>What designs are compared by.</summary>
public enum DesignMeasure
{
    /// <summary>Mass of everything carried, bags included; less is better.</summary>
    Mass,

    /// <summary>What is bought for it: the shopping list and what the options chosen cost; less is better.</summary>
    Price,

    /// <summary>Smallest white margin of all exposures, at the planned power; more is better.</summary>
    WhiteMargin,

    /// <summary>Smallest probability that a first frame is white; more is better.</summary>
    FirstWhite,

    /// <summary>Flashes that a set of cells gives, of the flash that gives fewest, at the powers of the session; more is better.</summary>
    Flashes,

    /// <summary>Energy that the session takes out of the cells; less is better.</summary>
    Energy,

    /// <summary>Longest part of the studio as it is carried; less is better.</summary>
    PackedLength,

    /// <summary>Parts of the studio that are put together; fewer stand sooner.</summary>
    Pieces,

    /// <summary>Smear at the subject, of the feature that smears most in its best exposure; less is better.</summary>
    Smear,

    /// <summary>Depth that one frame resolves, of the feature that has least in its best exposure; more is better.</summary>
    Depth,

    /// <summary>Highest mean wind that the studio stands; more is better.</summary>
    Wind,

    /// <summary>Exposures that work; more is better.</summary>
    Cards,
}
