namespace StudioKit.Web.Views;

/// <summary>How the page looks.</summary>
public enum Look
{
    /// <summary>Light or dark, as the device is set.</summary>
    Device,

    /// <summary>Dark on light.</summary>
    Light,

    /// <summary>Light on dark.</summary>
    Dark,

    /// <summary>Black on white with strong lines, to be read in the sun.</summary>
    Sun,
}
