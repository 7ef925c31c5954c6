namespace StudioKit.Web.Storage;

/// <summary>What happens in other tabs.</summary>
public enum TabNewsKind
{
    /// <summary>A kit was changed.</summary>
    Changed,

    /// <summary>Another tab wants the kit.</summary>
    Asked,

    /// <summary>Another tab took the kit.</summary>
    Lost,

    /// <summary>The other tab let go of the kit, so that it is in this one's hand now.</summary>
    Gained,
}
