namespace StudioKit.Web.Storage;

/// <summary>Something that happened in another tab.</summary>
/// <param name="Kind">What.</param>
/// <param name="Id">What the kit is kept under that it happened to.</param>
public readonly record struct TabNews(TabNewsKind Kind, string Id);
