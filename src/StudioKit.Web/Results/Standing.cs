namespace StudioKit.Web.Results;

/// <summary>How a kit stands, in the order of worry.</summary>
public enum Standing
{
    /// <summary>Every check passes and every card holds.</summary>
    Stands,

    /// <summary>Every check passes; some card holds only at the edge.</summary>
    AtTheEdge,

    /// <summary>A check fails.</summary>
    Fails,

    /// <summary>The text cannot be read, so nothing is planned.</summary>
    Unread,
}
