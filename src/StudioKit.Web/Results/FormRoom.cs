namespace StudioKit.Web.Results;

/// <summary>What a form is about.</summary>
public enum FormRoom
{
    /// <summary>What is carried: camera to stock.</summary>
    Gear,

    /// <summary>The animals, how they are lit, and the day.</summary>
    Animals,
}
