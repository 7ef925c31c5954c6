using StudioKit.Cli;

return StudioKitCommand.Run(args, CommandHost.ForProcess());
