using StudioKit.Field.Scale;

namespace StudioKit.Cli.Commands;

/// <summary>Scale of one picture, and the name that its copy gets.</summary>
/// <param name="Scale">The scale.</param>
/// <param name="TargetName">File name of the copy.</param>
internal sealed record ChosenScale(PictureScale Scale, string TargetName);
