using Orlop.App.CommandLine;

return await OrlopCommand.RunAsync(args, CommandStreams.OfProcess());
