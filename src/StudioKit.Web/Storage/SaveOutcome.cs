namespace StudioKit.Web.Storage;

/// <summary>What came of saving a kit.</summary>
public enum SaveOutcome
{
    /// <summary>It is saved.</summary>
    Saved,

    /// <summary>Another tab saved a newer state; nothing was replaced.</summary>
    Newer,

    /// <summary>The kit is no more on this device.</summary>
    Gone,
}
