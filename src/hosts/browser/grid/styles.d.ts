/** Style sheets are taken out of the script by the build. */
declare module "*.css";
