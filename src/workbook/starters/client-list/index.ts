export { clientListPlan, clientListSheet } from "./client-list";
export { clientPlan, type ListChoices } from "./client-plan";
export { readClientList, type ClientList, type ClientRecord } from "./client-records";
