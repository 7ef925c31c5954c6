namespace StudioKit.Web.Storage;

/// <summary>Something that the user is told once about the kits.</summary>
/// <param name="Kind">What.</param>
/// <param name="Name">Name of the kit or file.</param>
/// <param name="Other">The other name; what is wrong with a file; how many kits there are. Empty where there is none.</param>
/// <param name="Id">What the kit is kept under; empty where none is meant.</param>
public sealed record KeepingNotice(KeepingNoticeKind Kind, string Name, string Other = "", string Id = "");
