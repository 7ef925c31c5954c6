namespace StudioKit.Web.Results;

/// <summary>What a white margin means for the picture.</summary>
public enum MarginBandKind
{
    /// <summary>Not white.</summary>
    Grey,

    /// <summary>White, but with less room than the set-up asks for.</summary>
    Tight,

    /// <summary>White, as asked for.</summary>
    White,

    /// <summary>So bright that it washes out the subject.</summary>
    Veil,
}
